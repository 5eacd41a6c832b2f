/** What stands on each zone coat by coat, and what its sheets ask, from the cells alone. */
import * as cell from './cells.ts'
import type { CureRow } from './cure-clock.ts'
import { type Cells, idsIn, itemsOf, type RawSample, sheetCell } from './raw-sample.ts'

export type Coat = {
  readonly zone: string
  readonly layer: string
  readonly nr: number
  readonly sheet: string
  /** As the program derives it: a log written by hand points at it. */
  readonly step: string
  readonly sandStep: string
  /** The surface below it is sanded first. */
  readonly sanded: boolean
}

/** Every coat of every zone, from the boat outward. */
export function coatsByZone(raw: RawSample): ReadonlyMap<string, readonly Coat[]> {
  const stacks = new Map<string, Coat[]>()
  for (const [layer, cells] of Object.entries(itemsOf(raw.work, 'layers')))
    for (const zone of idsIn(cells.zones)) {
      const stack = stacks.get(zone) ?? []
      stacks.set(zone, stack)
      for (let nr = 1; nr <= Number(cells.coats); nr++) stack.push(coatOf({ layer, cells, zone, nr }))
    }
  return stacks
}

function coatOf(of: { layer: string; cells: Cells; zone: string; nr: number }): Coat {
  const { layer, cells, zone, nr } = of
  const grit = nr === 1 ? cells.sandBefore : cells.sandBetween
  return {
    zone,
    layer,
    nr,
    sheet: cells.sheet!,
    step: `coat:${zone}:${layer}:${nr}`,
    sandStep: `sand:${zone}:${layer}:${nr}`,
    sanded: grit !== undefined && grit !== '' && grit !== 'none',
  }
}

export const allCoats = (raw: RawSample): readonly Coat[] => [...coatsByZone(raw).values()].flat()

/** Neighbours in a stack: what is put on what. */
export const coatPairs = (raw: RawSample): readonly (readonly [below: Coat, above: Coat])[] =>
  [...coatsByZone(raw).values()].flatMap((stack) =>
    stack.slice(1).map((above, index) => [stack[index]!, above] as const),
  )

export type ClockCell =
  | 'touchDry'
  | 'dryToDew'
  | 'recoatLeast'
  | 'recoatMost'
  | 'dryToSand'
  | 'dryToTape'
  | 'dryToTread'
  | 'dryToFit'
  | 'dryToSling'
  | 'potLife'
  | 'induction'

export function clockRows(raw: RawSample, sheet: string, clock: ClockCell): readonly CureRow[] | undefined {
  const text = sheetCell(raw, sheet, clock)
  return text === undefined ? undefined : cell.cureRows(text)
}

export type SheetLimits = {
  readonly airLeastC: number
  readonly airMostC: number
  readonly humidityMost: number
  readonly dewMarginK: number
}

export const limitsOf = (raw: RawSample, sheet: string): SheetLimits => ({
  airLeastC: cell.celsius(sheetCell(raw, sheet, 'airLeast')!),
  airMostC: cell.celsius(sheetCell(raw, sheet, 'airMost')!),
  humidityMost: cell.share(sheetCell(raw, sheet, 'humidityMost')!),
  dewMarginK: cell.kelvins(sheetCell(raw, sheet, 'dewMargin')!),
})

export const zonesOfKind = (raw: RawSample, kinds: readonly string[]): readonly string[] =>
  Object.entries(itemsOf(raw.work, 'zones')).flatMap(([id, cells]) =>
    kinds.includes(cells.kind!) ? [id] : [],
  )
