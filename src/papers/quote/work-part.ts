/** What is done, zone by zone, in the owner's words: repairs, coats, hardware; and what is left alone. */
import type { Plan, ZoneArea } from '#plan'
import { heading, paragraph } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import type { Flowing } from '../strips.ts'
import { cell, figureCell, strongCell, type TableAt, tableHead, tableRow } from '../table.ts'

export function workPart(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  const zones = [...plan.surfaces.zones, ...plan.marks.zones].filter((zone) => hasWork(plan, zone))
  if (zones.length === 0) return []
  const measure = measureOf(kit.page)
  const table: TableAt = {
    ...measure,
    setter,
    columns: [
      { head: say.label('column.zone'), align: 'left', share: 40 },
      { head: say.label('column.area'), align: 'right', share: 20 },
      { head: say.label('paperColumn.repairs'), align: 'left', share: 52 },
      { head: say.label('column.coats'), align: 'left', share: 58 },
    ],
  }
  const rows = zones.map((zone) =>
    tableRow(table, [
      strongCell(zone.name),
      figureCell(say.sure('areaM2', zone.areaM2, zone.certainty)),
      cell(repairsOn(kit, zone)),
      cell(coatsOn(kit, zone)),
    ]),
  )
  return [
    {
      gap: 6,
      heading: heading(say.label('paperPart.work'), { ...measure, setter }),
      repeat: tableHead(table),
      units: rows,
    },
    ...hardware(kit),
  ]
}

const hasWork = (plan: Plan, zone: ZoneArea): boolean =>
  plan.buildUps.layers.some((layer) => layer.zone === zone.id) ||
  plan.repairs.repairs.some((repair) => repair.zone === zone.id)

const repairsOn = ({ plan, say }: Kit, zone: ZoneArea): string =>
  plan.repairs.repairs
    .filter((repair) => repair.zone === zone.id)
    .map(({ name, count }) => say.sentence('paper.counted', { name, count }))
    .join('\n')

const coatsOn = ({ plan, say }: Kit, zone: ZoneArea): string =>
  plan.buildUps.layers
    .filter((layer) => layer.zone === zone.id)
    .map(({ name, coats }) => say.sentence('paper.layerCoats', { name, count: coats }))
    .join('\n')

/** Hardware in one paragraph each: off and back on, off for good, left alone. */
function hardware(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  const of = { ...measureOf(kit.page), setter }
  const named = (wanted: (fitting: Plan['repairs']['fittings'][number]) => boolean): string =>
    plan.repairs.fittings
      .filter(wanted)
      .map(({ name, count }) => say.sentence('paper.counted', { name, count }))
      .join(', ')
  const groups = [
    { code: 'paper.refitted', names: named((one) => one.plan === 'refit' && !one.leaveAlone) },
    { code: 'paper.removed', names: named((one) => one.plan === 'remove' && !one.leaveAlone) },
    { code: 'paper.leftAlone', names: named((one) => one.plan === 'leave' || one.leaveAlone) },
  ].filter(({ names }) => names !== '')
  if (groups.length === 0) return []
  return [
    { gap: 3, units: groups.map(({ code, names }) => paragraph(say.sentence(code, { names }), 'body', of)) },
  ]
}
