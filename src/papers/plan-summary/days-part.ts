/** Every working day with its hours: the coats by name, the rest by kind. */
import { describeStep, type Plan } from '#plan'
import { heading } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import type { Flowing } from '../strips.ts'
import { cell, figureCell, strongCell, type TableAt, tableHead, tableRow } from '../table.ts'
import { dayHours } from '../work-hours.ts'

type Day = Plan['days']['days'][number]

export function daysPart(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  if (plan.days.days.length === 0) return []
  const measure = measureOf(kit.page)
  const table: TableAt = {
    ...measure,
    setter,
    columns: [
      { head: say.label('paperColumn.day'), align: 'left', share: 32 },
      { head: say.label('paperColumn.hours'), align: 'right', share: 16 },
      { head: say.label('column.coats'), align: 'left', share: 72 },
      { head: say.label('paperColumn.otherWork'), align: 'left', share: 50 },
    ],
  }
  const rows = plan.days.days.map((day) =>
    tableRow(table, [
      strongCell(say.date(day.date)),
      figureCell({ text: say.hours(dayHours(day)), certainty: 'worked' }),
      cell(coatsOf(kit, day)),
      cell(othersOf(kit, day)),
    ]),
  )
  return [
    {
      gap: 7,
      heading: heading(say.label('paperPart.days'), { ...measure, setter }),
      repeat: tableHead(table),
      units: rows,
    },
  ]
}

const isCoat = (plan: Plan, id: string): boolean =>
  plan.steps.steps.some((step) => step.id === id && step.coat !== undefined && step.sheet !== undefined)

/** `High-build primer, 2 of 2: Foredeck, Side decks`. */
function coatsOf({ plan, say }: Kit, day: Day): string {
  const zones = new Map<string, readonly string[]>()
  for (const id of new Set(day.pieces.map((piece) => piece.step))) {
    if (!isCoat(plan, id)) continue
    const { data } = describeStep(plan, id)
    const coat = say.sentence('paper.coatOf', data)
    zones.set(coat, [...(zones.get(coat) ?? []), String(data.zone ?? '')])
  }
  return [...zones].map(([coat, names]) => `${coat}: ${names.join(', ')}`).join('\n')
}

/** Kinds of work, each once, with how many steps of it. */
function othersOf({ plan, say }: Kit, day: Day): string {
  const counts = new Map<string, number>()
  for (const id of new Set(day.pieces.map((piece) => piece.step))) {
    if (isCoat(plan, id)) continue
    const kind = describeStep(plan, id).code.replace(/^step\./, '')
    counts.set(kind, (counts.get(kind) ?? 0) + 1)
  }
  return [...counts]
    .map(([kind, count]) => say.sentence('paper.kindCount', { kind: say.label(`paperKind.${kind}`), count }))
    .join(', ')
}
