/** The sentence that opens the sheet of a sum, with the answer in it, and the figures that stand large below. */
import type { SumAnswer, SumId, SumResult } from '#sums'

export type Said = { readonly code: string; readonly data: Readonly<Record<string, string | number>> }

/** The first of these that the answer has is the largest figure; the next two stand beside it. */
const leading: Readonly<Record<SumId, readonly string[]>> = {
  dew: ['dewPointC', 'marginK', 'leastSurfaceC'],
  spread: ['volumeL', 'practicalM2PerL', 'theoreticalM2PerL'],
  wet: ['wetFilmUm', 'solidsAfterThinningShare'],
  mix: ['baseMl', 'hardenerMl', 'thinnerMl'],
  catalyst: ['catalystG', 'catalystMl'],
  ply: ['thicknessMm', 'resinKgPerM2'],
  bevel: ['outerDiameterMm', 'bevelWidthMm', 'stepMm'],
  vent: ['airExposureM3PerHour', 'airQuarterLelM3PerHour'],
  sun: ['altitudeDeg', 'azimuthDeg'],
  cure: ['hours'],
}

export const leadingResults = (id: SumId, { results }: SumAnswer): readonly SumResult[] =>
  leading[id]
    .flatMap((key) => results.find((result) => result.key === key) ?? [])
    .filter(({ key, value }) => key !== 'thinnerMl' || value !== 0)

/** Go or not, where the sum gives a verdict. */
export type Verdict = { readonly go: boolean; readonly word: string }

export function verdictOf(id: SumId, answer: SumAnswer): Verdict | undefined {
  if (id === 'dew') {
    const state = textOf(answer, 'state')
    if (state === undefined) return undefined
    return { go: textOf(answer, 'verdict') === 'go', word: `sumVerdict.${state}` }
  }
  if (id === 'cure' && resultOf(answer, 'stopped') === true) return { go: false, word: 'sumVerdict.stopped' }
  return undefined
}

/** `sideName` writes a side of the boat. */
export function saySum(id: SumId, answer: SumAnswer, sideName: (side: string) => string): Said {
  const data = numbersOf(answer)
  switch (id) {
    case 'dew': {
      const state = textOf(answer, 'state')
      return { code: dewCodes[state ?? 'none'] ?? 'sumscreen.dewNone', data }
    }
    case 'spread':
      return {
        code: data.volumeL === undefined ? 'sumscreen.spread' : 'sumscreen.spreadVolume',
        data: spreadData(data),
      }
    case 'mix':
      return { code: data.thinnerMl ? 'sumscreen.mixThinned' : 'sumscreen.mix', data }
    case 'bevel':
      return { code: 'sumscreen.bevel', data: { ...data, discs: listOf(answer, 'discsMm').length } }
    case 'sun': {
      const lit = listOf(answer, 'lit').map((side) => sideName(String(side)))
      return {
        code: lit.length === 0 ? 'sumscreen.sunDown' : 'sumscreen.sun',
        data: { ...data, sides: lit.join(', ') },
      }
    }
    case 'cure':
      return { code: data.hours === undefined ? 'sumscreen.cureStopped' : 'sumscreen.cure', data }
    default:
      return { code: plainCodes[id], data }
  }
}

const dewCodes: Readonly<Record<string, string>> = {
  dry: 'sumscreen.dewGo',
  close: 'sumscreen.dewClose',
  wet: 'sumscreen.dewWet',
  none: 'sumscreen.dewNone',
}

const plainCodes = {
  wet: 'sumscreen.wet',
  catalyst: 'sumscreen.catalyst',
  ply: 'sumscreen.ply',
  vent: 'sumscreen.vent',
} as const

type Numbers = Readonly<Record<string, number>>

const spreadData = (data: Numbers): Numbers => ({
  ...data,
  spreadM2PerL: data.practicalM2PerL ?? data.theoreticalM2PerL ?? Number.NaN,
})

const numbersOf = ({ results }: SumAnswer): Numbers =>
  Object.fromEntries(results.flatMap(({ key, value }) => (typeof value === 'number' ? [[key, value]] : [])))

export const resultOf = ({ results }: SumAnswer, key: string): SumResult['value'] | undefined =>
  results.find((result) => result.key === key)?.value

export function textOf(answer: SumAnswer, key: string): string | undefined {
  const value = resultOf(answer, key)
  return typeof value === 'string' ? value : undefined
}

export function numberOf(answer: SumAnswer, key: string): number | undefined {
  const value = resultOf(answer, key)
  return typeof value === 'number' ? value : undefined
}

export function listOf(answer: SumAnswer, key: string): readonly (number | string)[] {
  const value = resultOf(answer, key)
  return Array.isArray(value) ? value : []
}

/** A figure that went into the answer, from the way to it. */
export function givenNumber({ how }: SumAnswer, key: string): number | undefined {
  const value = how.find(({ data }) => data[key] !== undefined)?.data[key]
  return typeof value === 'number' ? value : undefined
}
