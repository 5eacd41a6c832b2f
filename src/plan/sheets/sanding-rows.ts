/** The sanding of a build-up grit by grit: over how much, how long, with how many discs. */
import { weakest } from '../certainty.ts'
import type { Sure, ZoneLayer } from '../types.ts'

export type SandingRow = {
  /** Before which layer, or between its coats, by its id and its name. */
  readonly layer: string
  readonly name: string
  readonly when: 'before' | 'between'
  readonly grit: string
  readonly areaM2: number
  /** Person-hours. */
  readonly hours: Sure<number>
  readonly discs: number
}

/** Of the layers given, which may lie on several zones; layers from the boat outward, grits coarse to fine. */
export function sandingRows(layers: readonly ZoneLayer[]): readonly SandingRow[] {
  const rows = new Map<string, SandingRow>()
  for (const { layer, name, ladder, between } of layers)
    for (const { when, rung } of [
      ...ladder.map((rung) => ({ when: 'before' as const, rung })),
      ...(between ? [{ when: 'between' as const, rung: between }] : []),
    ]) {
      const { grit, areaM2, hoursPerM2, disc } = rung
      const key = `${layer} ${when} ${grit}`
      const had = rows.get(key)
      rows.set(key, {
        layer,
        name,
        when,
        grit,
        areaM2: (had?.areaM2 ?? 0) + areaM2,
        hours: {
          value: (had?.hours.value ?? 0) + hoursPerM2.value * areaM2,
          certainty: weakest(had?.hours.certainty, hoursPerM2.certainty),
        },
        discs: (had?.discs ?? 0) + disc.perM2 * areaM2,
      })
    }
  return inOrder([...rows.values()], layers)
}

/** A zone with filler brings in a coarse grit after another zone began with a finer one. */
function inOrder(rows: readonly SandingRow[], layers: readonly ZoneLayer[]): readonly SandingRow[] {
  const names = [...new Set(layers.map(({ layer }) => layer))]
  const order = ({ when }: SandingRow): number => (when === 'before' ? 0 : 1)
  const number = ({ grit }: SandingRow): number => Number(grit.replace(/\D/g, ''))
  return names.flatMap((layer) =>
    rows
      .filter((row) => row.layer === layer)
      .toSorted((a, b) => order(a) - order(b) || number(a) - number(b)),
  )
}
