/**
 * The day's steps as lines to tick and to write on: number, when, what, who, and blanks for what really happened.
 * A triangle marks a step that a danger or warning stands before.
 */
import { paragraph } from '../blocks.ts'
import { noteFlag, tickBox } from '../flags.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { type Drawing, filled, inked, line, type Point, textAt } from '../shapes.ts'
import { beside, heightOf, type Strip, stacked } from '../strips.ts'
import { typeStyle } from '../type-styles.ts'
import type { DayData, DayStep } from './day-data.ts'
import { nameOf } from './tape.ts'
import { blanks, blanksFrom, blanksHead } from './write-in.ts'

/**
 * Full lines with names; lines in small type; coats in lines and the rest in two columns; everything in two columns;
 * the same, a line each.
 */
export type StepMode = 'roomy' | 'tight' | 'coats first' | 'columns' | 'one line each'

const tickWidth = 7
const flagWidth = 7.4

export function stepStrips(kit: Kit, data: DayData, mode: StepMode): readonly Strip[] {
  if (mode === 'roomy' || mode === 'tight') return lined(kit, data, { steps: data.steps, mode })
  if (mode !== 'coats first') return inColumns(kit, data, { steps: data.steps, mode })
  const coats = data.steps.filter((step) => step.coat)
  return [
    ...(coats.length > 0 ? lined(kit, data, { steps: coats, mode }) : []),
    ...inColumns(kit, data, { steps: data.steps.filter((step) => !step.coat), mode }),
  ]
}

type Some = { readonly steps: readonly DayStep[]; readonly mode: StepMode }

const lined = (kit: Kit, data: DayData, { steps, mode }: Some): readonly Strip[] => [
  blanksHead(kit),
  ...steps.map((step) => stepLine(kit, data, { step, mode })),
]

function inColumns(kit: Kit, data: DayData, { steps, mode }: Some): readonly Strip[] {
  const { x, width } = measureOf(kit.page)
  const column = (width - 5) / 2
  const rows = Math.ceil(steps.length / 2)
  return Array.from({ length: rows }, (_, row) =>
    beside(
      [steps[row], steps[row + rows]].flatMap((step, index) =>
        step ? [shortLine(kit, data, { step, mode, x: x + index * (column + 5), width: column })] : [],
      ),
    ),
  )
}

type Line = { readonly step: DayStep; readonly mode: StepMode }

function stepLine(kit: Kit, data: DayData, { step, mode }: Line): Strip {
  const { x, width } = measureOf(kit.page)
  const left = x + tickWidth + flagWidth
  const of = { x: left, width: blanksFrom(kit, step) - left - 6.5, setter: kit.setter }
  const people = step.people.map((id) => nameOf(kit, id)).join(', ')
  const when = timesOf(kit, data, step)
  const lines =
    mode === 'roomy'
      ? [
          ...paragraph(step.text, 'strong', of),
          ...paragraph(`${when}  ${people}`, 'small', of, { ink: 'ink2' }),
        ]
      : paragraph(`${when}  ${step.text}`, 'small', of)
  const height = Math.max(heightOf(lines) + 1.4, 6.6)
  const inset = Math.max(0.5, (height - heightOf(lines)) / 2)
  return {
    height,
    draw: (top) => [
      tickBox([x, top + 0.8], 5),
      ...noteFlag(step.number, [x + tickWidth, top + 0.5]),
      ...stacked(lines).draw(top + inset),
      ...(warned(data, step) ? alertSign([blanksFrom(kit, step) - 3.4, top + 3.4]) : []),
      ...blanks(kit, step, { top, height }),
      inked(line('thin', [x, top + height], [x + width, top + height]), 'hair'),
    ],
  }
}

type Short = Line & { readonly x: number; readonly width: number }

function shortLine(kit: Kit, data: DayData, { step, mode, x, width }: Short): Strip {
  const left = x + 4.8
  const words = `${step.number}  ${timesOf(kit, data, step)}  ${step.text}`
  const room = width - 4.8 - 3
  const lines =
    mode === 'one line each' ? [kit.setter.fit(words, 'fine', room)] : kit.setter.wrap(words, 'fine', room)
  return {
    height: Math.max(4.4, lines.length * typeStyle('fine').lead + 0.9),
    draw: (top) => [
      tickBox([x, top + 0.5], 3.2),
      ...lines.map((text, index) => textAt([left, top + 3.1 + index * typeStyle('fine').lead], text, 'fine')),
      ...(warned(data, step) ? [textAt([x + width, top + 3.1], '!', 'smallStrong', { align: 'right' })] : []),
    ],
  }
}

const warned = (data: DayData, step: DayStep): boolean =>
  data.cautions.some(
    ({ caution, steps }) =>
      steps.includes(step.number) && (caution.severity === 'danger' || caution.severity === 'warning'),
  )

/** `07:30 to 09:00`, every stretch of the day. */
export function timesOf({ say }: Kit, data: DayData, step: DayStep): string {
  const pieces = data.day?.pieces.filter((piece) => piece.step === step.id) ?? []
  return pieces
    .map(({ startMinute, endMinute }) =>
      say.sentence('paper.fromTo', { from: say.time(startMinute), to: say.time(endMinute) }),
    )
    .join(', ')
}

export const alertSign = ([x, y]: Point): Drawing => [
  filled(
    [
      [x - 2, y + 1.6],
      [x + 2, y + 1.6],
      [x, y - 1.9],
    ],
    'ink',
  ),
  textAt([x, y + 1.25], '!', 'grid', { align: 'centre', ink: 'paper' }),
]

/** What did not go on the sheet is never dropped in silence. */
export const moreStrip = (
  kit: Kit,
  code: string,
  count: number,
  { x, width }: { readonly x: number; readonly width: number },
): Strip =>
  stacked(paragraph(kit.say.sentence(code, { count }), 'smallStrong', { x, width, setter: kit.setter }))
