/** Where each layer lies in the section: bands from the weather side down, mm from the top. */
import { type HatchName, hatchFor } from '../hatches.ts'
import type { Stack, StackLayer } from './stacks.ts'

export type Bond = 'keyed' | 'same coat' | 'not tested'

export type Band = {
  /** `new:0` and up from the boat outward, `old`, `laminate`. */
  readonly id: string
  readonly top: number
  readonly height: number
  readonly hatch?: HatchName
  /** Heights of the lines between its coats. */
  readonly coatLines: readonly number[]
  readonly between: Bond
  /** What its lower face does. */
  readonly below: Bond
}

export type Hollow = {
  readonly id: string
  readonly top: number
  readonly nr: number
  readonly hatch?: HatchName
}

export type Bands = {
  readonly bands: readonly Band[]
  /** Fillings, sunk into the band below them. */
  readonly hollows: readonly Hollow[]
  readonly height: number
}

export const newId = (index: number): string => `new:${index}`

/** `readable`: every layer tall enough for its hatch. `true`: new films to one scale, what lies below cut short. */
export type BandScale = 'readable' | 'true'

/** New films together are as tall as this when they are to scale, mm. */
const trueHeight = 42

/** Dry film of all coats, m; of a film that nobody knows nothing. */
const filmOf = ({ dryFilmM, coats }: StackLayer): number => (dryFilmM?.value ?? 0) * coats

/** Dry film of all that covers, m. */
export const dryTogether = ({ layers }: Stack): number =>
  layers.filter(({ spot }) => !spot).reduce((sum, layer) => sum + filmOf(layer), 0)

function heightsIn(stack: Stack, scale: BandScale): (layer: StackLayer) => number {
  const all = dryTogether(stack)
  return scale === 'true' && all > 0 ? (layer) => (filmOf(layer) / all) * trueHeight : heightOf
}

const heightOf = ({ role, coats }: StackLayer): number =>
  role === 'filler' || role === 'fairing' ? 9 : 4.5 + 2.5 * Math.min(4, coats)
const oldHeight = 8
const laminateHeight = 14

/** The bands of a build-up, from the weather side down. */
export function bandsOf(stack: Stack, scale: BandScale = 'readable'): Bands {
  const heightIn = heightsIn(stack, scale)
  const covering = stack.layers.map((layer, index) => ({ layer, index })).filter(({ layer }) => !layer.spot)
  const bands: Band[] = []
  let top = 0
  for (const { layer, index } of [...covering].reverse()) {
    const height = heightIn(layer)
    bands.push({
      id: newId(index),
      top,
      height,
      ...hatchOf(layer.family, layer.role),
      coatLines: coatLines(layer, { top, height }),
      between: layer.sandBetween === '' ? 'same coat' : 'keyed',
      below: layer.sandBefore === '' ? 'not tested' : 'keyed',
    })
    top += height
  }
  const under = underneath(stack, top)
  const all = [...bands, ...under]
  return {
    bands: all,
    hollows: hollowsOf(stack, all),
    height: all.reduce((sum, band) => sum + band.height, 0),
  }
}

const hatchOf = (family: string, role: string): { readonly hatch?: HatchName } => {
  const hatch = hatchFor(family, role)
  return hatch ? { hatch } : {}
}

function coatLines(
  { coats }: StackLayer,
  { top, height }: { readonly top: number; readonly height: number },
): readonly number[] {
  const shown = Math.min(4, coats)
  return Array.from({ length: shown - 1 }, (_, k) => top + (height * (k + 1)) / shown)
}

const oldHatches: Readonly<Record<string, readonly [family: string, role: string]>> = {
  gelcoat: ['gelcoat', 'primer'],
  'one-part': ['one-part', 'finish'],
  'two-part': ['two-part', 'finish'],
  'epoxy primer': ['epoxy', 'primer'],
  acrylic: ['acrylic', 'finish'],
}

function underneath(stack: Stack, top: number): readonly Band[] {
  const plain = { coatLines: [], between: 'same coat' as const, below: 'same coat' as const }
  if (stack.existing === 'bare laminate' && !stack.onPaint) {
    return [{ ...plain, id: 'laminate', top, height: laminateHeight, hatch: 'glass' }]
  }
  const known = stack.onPaint ? undefined : oldHatches[stack.existing]
  const old: Band = { ...plain, id: 'old', top, height: oldHeight, ...(known ? hatchOf(...known) : {}) }
  return [old, { ...plain, id: 'laminate', top: top + oldHeight, height: laminateHeight, hatch: 'glass' }]
}

/** A filling lies in the band that is below it when it is put on: the next covering layer down, or what was there. */
function hollowsOf(stack: Stack, bands: readonly Band[]): readonly Hollow[] {
  return stack.layers.flatMap((layer, index): readonly Hollow[] => {
    if (!layer.spot) return []
    const below = stack.layers.slice(0, index).findLastIndex((each) => !each.spot)
    const band =
      bands.find(({ id }) => id === newId(below)) ?? bands.find(({ id }) => id === 'old' || id === 'laminate')
    const nr = stack.layers.slice(0, index).filter((each) => each.spot).length
    return [{ id: newId(index), top: band?.top ?? 0, nr, ...hatchOf(layer.family, layer.role) }]
  })
}
