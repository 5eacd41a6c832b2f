/** The dates that matter: each stage of the work with its hours, the end, and when slings may touch the paint. */
import type { Plan } from '#plan'
import { heading } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import type { Flowing } from '../strips.ts'
import { cell, figureCell, noCell, strongCell, type TableAt, tableHead, tableRow } from '../table.ts'

export function datesPart(kit: Kit): readonly Flowing[] {
  const { say, setter, job, plan } = kit
  const stages = stagesOf(plan)
  if (stages.length === 0) return []
  const measure = measureOf(kit.page)
  const table: TableAt = {
    ...measure,
    setter,
    columns: [
      { head: say.label('paperColumn.stage'), align: 'left', share: 70 },
      { head: say.label('paperColumn.from'), align: 'left', share: 38 },
      { head: say.label('paperColumn.until'), align: 'left', share: 38 },
      { head: say.label('paperColumn.hours'), align: 'right', share: 22 },
    ],
  }
  const rows = stages.map((stage) =>
    tableRow(table, [
      strongCell(say.label(`paperPhase.${stage.phase}`)),
      cell(say.date(say.dateOf(stage.startMinute))),
      cell(say.date(say.dateOf(stage.endMinute))),
      figureCell({ text: say.hours(stage.minutes / 60), certainty: 'worked' }),
    ]),
  )
  const ends = [
    ...(plan.days.launchMinute === undefined
      ? []
      : [{ key: 'paperDate.slings', date: say.dateOf(plan.days.launchMinute) }]),
    ...(job.launchDate === undefined ? [] : [{ key: 'paperDate.launch', date: job.launchDate }]),
  ].map(({ key, date }) =>
    tableRow(table, [strongCell(say.label(key)), noCell, cell(say.date(date)), noCell]),
  )
  return [
    {
      gap: 7,
      heading: heading(say.label('paperPart.dates'), { ...measure, setter }),
      repeat: tableHead(table),
      units: [[...rows, ...ends].flat()],
    },
  ]
}

type Stage = {
  readonly phase: number
  readonly startMinute: number
  readonly endMinute: number
  readonly minutes: number
}

/** Stages in order, with the person-minutes of their pieces. */
function stagesOf(plan: Plan): readonly Stage[] {
  const phaseOf = new Map(plan.steps.steps.map((step) => [step.id, step.phase]))
  const stages = new Map<number, Stage>()
  for (const placed of plan.days.placed) {
    const phase = phaseOf.get(placed.keyFor ?? placed.step)
    if (phase === undefined || placed.done) continue
    const minutes = placed.pieces.reduce(
      (sum, piece) => sum + piece.people.length * (piece.endMinute - piece.startMinute),
      0,
    )
    const known = stages.get(phase) ?? {
      phase,
      startMinute: placed.startMinute,
      endMinute: placed.endMinute,
      minutes: 0,
    }
    stages.set(phase, {
      phase,
      startMinute: Math.min(known.startMinute, placed.startMinute),
      endMinute: Math.max(known.endMinute, placed.endMinute),
      minutes: known.minutes + minutes,
    })
  }
  return [...stages.values()].sort((a, b) => a.phase - b.phase)
}
