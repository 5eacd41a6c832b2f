import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { createPlanner, suggestBuildUps } from '#plan'
import { planInput, projectRaw, sampleRaw } from '../../../test/support/samples.ts'
import type { JobEdits } from './job-view.ts'
import { takeBuildUp } from './take-build-up.ts'

const raw = sampleRaw('open-powerboat')

/** Edits on a copy of the document's layers. */
function edited(before: typeof raw) {
  const layers = structuredClone(before.work.layers) as Record<string, Record<string, string>>
  let nr = 0
  const edits: JobEdits = {
    set: ({ item, key }, text) => {
      if (item !== undefined) layers[item] = { ...layers[item], [key]: text ?? '' }
    },
    add: (_, cells) => {
      const id = `taken-${++nr}`
      layers[id] = { ...cells, order: `z${String(nr).padStart(3, '0')}` }
      return id
    },
    remove: ({ item }) => {
      if (item !== undefined) delete layers[item]
    },
    move: () => undefined,
    together: (work) => work(edits),
  }
  return { edits, document: () => ({ ...before, work: { ...before.work, layers } }) }
}

describe('a suggested build-up', () => {
  it('stands in the place of the coats of its zones, holds there, and leaves the other zones and the fillers alone', () => {
    const projected = projectRaw(raw)
    const { plan } = createPlanner().plan(planInput(projected, undefined))
    const found = suggestBuildUps({
      plan,
      work: projected.work,
      prices: projected.money?.prices,
      catalogue,
      wish: { family: 'two-part polyurethane' },
    })
    const group = found.groups.find(({ zones }) => zones.includes('topsides-port'))!
    const [best] = group.suggestions
    const sheetOf = (id: string) => plan.buildUps.sheets.find((sheet) => sheet.id === id)
    const { edits, document } = edited(raw)
    takeBuildUp(
      { edits, raw },
      {
        steps: best!.steps,
        zones: group.zones,
        roleOf: (id) => sheetOf(id)?.role,
        nameOf: (id) => sheetOf(id)?.name ?? id,
      },
    )
    const now = projectRaw(document())
    expect(now.problems.filter(({ severity }) => severity === 'error')).toEqual([])
    const after = createPlanner().plan(planInput(now, undefined)).plan
    const coats = (of: typeof plan, zone: string) =>
      of.buildUps.layers
        .filter((layer) => layer.zone === zone && !/fill|fair/.test(layer.role))
        .map(({ sheet }) => sheet)
    const fillers = (of: typeof plan) =>
      of.buildUps.layers.filter(({ role }) => /fill|fair/.test(role)).map(({ id }) => id)
    for (const zone of group.zones)
      expect(coats(after, zone)).toEqual(best!.steps.map(({ offer }) => offer.id))
    for (const { id } of plan.surfaces.zones)
      if (!group.zones.includes(id)) expect(coats(after, id)).toEqual(coats(plan, id))
    expect(fillers(after)).toEqual(fillers(plan))
    const mine = after.bonds.notes.filter(
      ({ severity, data }) =>
        (severity === 'fault' || severity === 'missing') && group.zones.includes(String(data.zone)),
    )
    expect(mine).toEqual([])
  })
})
