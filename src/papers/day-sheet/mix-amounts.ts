/**
 * Rounded amounts of a mix card that add up: the whole is rounded once, and the step that is over goes to the parts
 * that lost most. SOURCE: largest-remainder method (Hamilton's apportionment, 1792).
 */
import type { Plan } from '#plan'

type Pour = Plan['pours']['pours'][number]

export type MixPart = {
  readonly part: 'A' | 'B' | 'thinner' | 'bead'
  readonly ml: number
  /** What the cup reads once it is in; bead is stirred in on top and is not part of the level. */
  readonly toMl?: number
  readonly g?: number
}

export type MixAmounts = {
  /** In the order they are poured. */
  readonly parts: readonly MixPart[]
  readonly readyMl: number
  /** Decimals the millilitres are rounded to. */
  readonly decimals: 0 | 1
}

/** Under this a whole millilitre is too coarse: a few drops of catalyst matter. */
const fineBelowMl = 20

export function mixAmounts(pour: Pour): MixAmounts {
  const liquids = [...pour.partsM3, ...(pour.thinnerM3 > 0 ? [pour.thinnerM3] : [])].map(
    (volume) => volume * 1e6,
  )
  const decimals = Math.min(...liquids) < fineBelowMl ? 1 : 0
  const rounded = shareOut(liquids, 10 ** -decimals)
  let level = 0
  const parts = rounded.map((ml, index): MixPart => {
    level = tidy(level + ml)
    const isThinner = index >= pour.partsM3.length
    const kg = isThinner ? pour.thinnerKg : pour.partsKg?.[index]
    return {
      part: isThinner ? 'thinner' : index === 0 ? 'A' : 'B',
      ml,
      toMl: level,
      ...(kg === undefined ? {} : { g: grams(kg) }),
    }
  })
  const bead: readonly MixPart[] =
    pour.additiveM3 > 0
      ? [{ part: 'bead', ml: tidy(Math.round(pour.additiveM3 * 1e6 * 10 ** decimals) / 10 ** decimals) }]
      : []
  return { parts: [...parts, ...bead], readyMl: level, decimals }
}

/** What a one-part comes from is no part A. */
export const partKey = (pour: Pour, part: MixPart['part']): MixPart['part'] | 'only' =>
  part === 'A' && pour.partsM3.length === 1 ? 'only' : part

const tidy = (value: number): number => Math.round(value * 10) / 10

const grams = (kg: number): number => (kg < 0.02 ? Math.round(kg * 10_000) / 10 : Math.round(kg * 1000))

/** Values rounded to `step` so that they sum to the rounded sum. */
export function shareOut(values: readonly number[], step: number): readonly number[] {
  const scaled = values.map((value) => value / step)
  const floors = scaled.map(Math.floor)
  const whole = Math.round(scaled.reduce((sum, value) => sum + value, 0))
  const over = whole - floors.reduce((sum, value) => sum + value, 0)
  const byRemainder = scaled
    .map((value, index) => ({ index, rest: value - floors[index]! }))
    .sort((a, b) => b.rest - a.rest || a.index - b.index)
  const raised = new Set(byRemainder.slice(0, over).map(({ index }) => index))
  return floors.map((floor, index) => tidy((floor + (raised.has(index) ? 1 : 0)) * step))
}
