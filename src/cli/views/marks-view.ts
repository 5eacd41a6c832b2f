/** Tape lines and panels with the numbers to strike them. */
import { panelText } from '#papers'
import type { Plan, StripeMark } from '#plan'
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
            words.figure('lowerByTapeM', row.lowerM),
            words.figure('upperByTapeM', row.upperM),
            words.figure('girthByTapeM', row.girthM),
          ]),
        ],
        ['right', 'right', 'right', 'right'],
      ),
      ...overFloorLines(plan, stripe, words),
    ]),
  )
  const lines = plan.marks.lines.flatMap((line) =>
    section(line.name, [
      words.sentence('marks.line', { tapeM: line.table.tapeM, zone: zoneName(plan, line.zone) }),
      ...table(
        [
          ['fromStern', 'heightOver', 'halfBreadth'].map((key) => words.label(`column.${key}`)),
          ...line.table.rows.map((row) => [
            words.figure('xM', row.xM),
            words.figure('heightByTapeM', row.heightM),
            words.figure('halfBreadthByTapeM', row.halfBreadthM),
          ]),
        ],
        ['right', 'right', 'right'],
      ),
    ]),
  )
  const panels = plan.marks.panels.map((panel) => panelText(panel, words))
  return [...stripes, ...lines, ...section(words.label('heading.panels'), panels)]
}

const zoneName = ({ surfaces, marks }: Plan, id: string): string =>
  [...surfaces.zones, ...marks.zones].find((zone) => zone.id === id)?.name ?? id

function overFloorLines(
  { standing: { fit } }: Plan,
  { id, name }: StripeMark,
  words: Words,
): readonly string[] {
  const found = fit?.stripes.find(({ mark }) => mark === id)
  if (!fit || !found) return []
  const keys = ['portLower', 'portUpper', 'starboardLower', 'starboardUpper'] as const
  const heads = keys.map((key) => words.label(`column.overFloor.${key}`))
  return [
    words.sentence('marks.overFloor', { name, over: fit.over }),
    ...table(
      [
        [words.label('column.fromStern'), ...heads],
        ...found.rows.map((row) => [
          words.figure('xM', row.xM),
          ...keys.map((key) => words.figure('heightByTapeM', row[`${key}M`])),
        ]),
      ],
      ['right', 'right', 'right', 'right', 'right'],
    ),
  ]
}

export const marksJson = (plan: Plan) => ({
  stripes: plan.marks.stripes.map(({ id, name, zone, table: found }) => ({ id, name, zone, ...found })),
  lines: plan.marks.lines.map(({ id, name, zone, table: found }) => ({ id, name, zone, ...found })),
  panels: plan.marks.panels.map(({ panelAreaM2, kind: _kind, ...panel }) => ({
    ...panel,
    areaM2: panel.count * panelAreaM2,
  })),
  ...(plan.standing.fit
    ? { overFloor: plan.standing.fit.stripes, heightsAreOver: plan.standing.fit.over }
    : {}),
  tapeM: plan.marks.tapeM,
})
