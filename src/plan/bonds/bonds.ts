/** Whether each zone's layers hold on what is there and on each other. */
import { judge, type Stack } from '#core/coating'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Known } from '../known.ts'
import type { Stage } from '../remember.ts'
import type { BondStack, Bonds, BuildUps, Marks, Repairs, Surfaces, ZoneArea } from '../types.ts'
import { bondNotes, type Names } from './bond-notes.ts'
import type { Around } from './ground.ts'
import { stackOf } from './stack-of.ts'

export type BondsInput = {
  readonly zones: Work['zones']
  readonly surfaces: Surfaces
  readonly marks: Marks
  readonly repairs: Repairs
  readonly buildUps: BuildUps
  readonly known: Known
}

export const bonds: Stage<BondsInput, Bonds> = { name: 'bonds', run: judgeStacks }

function judgeStacks(input: BondsInput): Bonds {
  const around = aroundOf(input)
  const names = namesIn(input, around.zones)
  const groups = new Map<
    string,
    { readonly zones: string[]; readonly existing: string; readonly stack: Stack }
  >()
  for (const zone of around.zones) {
    const { id, existing } = zone
    const stack = stackOf(zone, around, input.known.grits)
    if (stack.layers.length === 0) continue
    // Zones that are the same to the judge are told of once.
    const key = JSON.stringify([existing, stack])
    const same = groups.get(key)
    if (same) same.zones.push(id)
    else groups.set(key, { zones: [id], existing, stack })
  }
  const stacks = [...groups.values()].map(({ zones, existing, stack }): BondStack => {
    const judged = judge(input.known.bonds, stack)
    return {
      zones,
      existing,
      ...judged,
      notes: bondNotes([{ zones, existing, faults: judged.faults }], names),
    }
  })
  return {
    stacks,
    notes: [...bondNotes(stacks, names), ...contradictions(input, around.zones)],
  }
}

export const aroundOf = ({ zones, surfaces, marks, buildUps, repairs, known }: BondsInput): Around => ({
  zones: [...surfaces.zones, ...marks.zones],
  given: zones,
  buildUps,
  repairs,
  guesses: known.bonds.guesses,
})

function namesIn({ buildUps, repairs }: BondsInput, zones: readonly ZoneArea[]): Names {
  const sheetName = (id: string | undefined) => buildUps.sheets.find((sheet) => sheet.id === id)?.name
  return {
    zone: (id) => zones.find((zone) => zone.id === id)?.name ?? id,
    coat: (id) =>
      buildUps.layers.find((layer) => layer.layer === id)?.name ??
      sheetName(repairs.repairs.find((repair) => repair.finding === id)?.sheet),
  }
}

/** Film that solvent softens is neither two-part nor gelcoat, and the other way round. */
function contradictions({ zones }: BondsInput, areas: readonly ZoneArea[]): readonly Note[] {
  const softening = ['one-part', 'lacquer', 'acrylic', 'antifouling']
  const standing = ['gelcoat', 'two-part', 'epoxy primer', 'bare laminate']
  return areas.flatMap(({ id, name, existing }): readonly Note[] => {
    const rub = zones.find((zone) => zone.id === id)?.solventRub
    const torn =
      (rub === 'softens' && standing.includes(existing)) ||
      (rub === 'no effect' && softening.includes(existing))
    return torn
      ? [
          {
            code: 'buildup.rubContradicts',
            severity: 'warning',
            data: { zone: name, rub: rub ?? '', oldSurface: existing },
          },
        ]
      : []
  })
}
