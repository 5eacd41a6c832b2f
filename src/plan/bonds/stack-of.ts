/** A zone's layers as the judge takes them. */
import type { Grit, Sanding, Stack, StackLayer } from '#core/coating'
import { leastHeightM } from '#core/marking'
import { COVERS_FROM } from '../sheets/covers-from.ts'
import type { ResolvedSheet, ZoneArea, ZoneLayer } from '../types.ts'
import { type Around, clocksOf, coatOf, groundOf } from './ground.ts'

const ROUNDED_M = 1e-4

/** Where a zone lies when she floats; a boot-top that nobody has placed, or that stands too low, counts as wet. */
export function whereOf({ kind, lowestM }: ZoneArea): Stack['where'] {
  const clear = lowestM !== undefined && lowestM >= leastHeightM - ROUNDED_M
  return kind === 'bottom' || (kind === 'boot-top' && !clear) ? 'below water' : 'above water'
}

export function stackOf(zone: ZoneArea, around: Around, grits: readonly Grit[]): Stack {
  const layers = around.buildUps.layers.filter((layer) => layer.zone === zone.id)
  return {
    ground: groundOf(zone, around),
    layers: layers.flatMap((layer) => {
      const sheet = around.buildUps.sheets.find((one) => one.id === layer.sheet)
      return sheet ? [layerOf({ layer, sheet, zone, grits })] : []
    }),
    where: whereOf(zone),
    weathers: true,
  }
}

function layerOf(of: {
  readonly layer: ZoneLayer
  readonly sheet: ResolvedSheet
  readonly zone: ZoneArea
  readonly grits: readonly Grit[]
}): StackLayer {
  const { layer, sheet, zone, grits } = of
  return {
    id: layer.layer,
    ...coatOf(sheet),
    coats: layer.coats,
    covers: layer.areaM2 >= COVERS_FROM * zone.areaM2,
    before: sandingOf(layer.sandBefore, grits),
    between: sandingOf(layer.sandBetween, grits),
    ...(layer.dryFilmM ? { dryFilmM: layer.dryFilmM.value } : {}),
    clocks: clocksOf(sheet),
    colour: sheet.colour,
  }
}

/** A grade that the table does not have stands for its nearest. */
export function sandingOf(text: string, grits: readonly Grit[]): Sanding {
  if (text === 'none') return 'none'
  const number = Number(/\d+/.exec(text)?.[0])
  if (Number.isNaN(number)) return undefined
  const fepa = /p\s*\d/i.test(text)
  const distance = ({ name }: Grit): number => Math.abs(Number(name.replace('P', '')) - number)
  return grits
    .filter(({ name }) => name.startsWith('P') === fepa)
    .reduce<Grit | undefined>(
      (best, one) => (best === undefined || distance(one) < distance(best) ? one : best),
      undefined,
    )
}
