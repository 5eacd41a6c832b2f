/** Tape lines and panels with the numbers to strike them. */
import { panelText } from '#papers'
import type { Plan } from '#plan'
import type { Words } from '#words'
import { section, table } from './table.ts'

export function marksLines(plan: Plan, words: Words): readonly string[] {
  const head = ['fromStern', 'lower', 'upper', 'girth'].map((key) => words.label(`column.${key}`))
  const stripes = plan.marks.stripes.flatMap((stripe) =>
    section(stripe.name, [
      words.sentence('marks.stripe', { areaM2: stripe.table.areaM2, tapeM: stripe.table.tapeM }),
      ...table(
        [
          head,
          ...stripe.table.rows.map((row) => [
            words.figure('xM', row.xM),
            words.figure('lowerMm', row.lowerM * 1000),
            words.figure('upperMm', row.upperM * 1000),
            words.figure('girthMm', row.girthM * 1000),
          ]),
        ],
        ['right', 'right', 'right', 'right'],
      ),
    ]),
  )
  const panels = plan.marks.panels.map((panel) => panelText(panel, words))
  return [...stripes, ...section(words.label('heading.panels'), panels)]
}

export const marksJson = (plan: Plan) => ({
  stripes: plan.marks.stripes.map(({ id, name, zone, table: found }) => ({ id, name, zone, ...found })),
  panels: plan.marks.panels.map(({ panelAreaM2, kind: _kind, ...panel }) => ({
    ...panel,
    areaM2: panel.count * panelAreaM2,
  })),
  tapeM: plan.marks.tapeM,
})
