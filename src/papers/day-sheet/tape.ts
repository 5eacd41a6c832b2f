/** The time tape with the day's work under it, a row a person: coats solid, work that can be split outlined. */
import type { Kit } from '../kit.ts'
import { box, corners, type Drawing, filled, inked, line, textAt } from '../shapes.ts'
import type { Strip } from '../strips.ts'
import type { DayData } from './day-data.ts'
import { type HoursAxis, hourLabel, hourMarks } from './hours-axis.ts'

const tapeHeight = 7
const rowHeight = 9
const barHeight = 5.6
/** Left free at both ends of a bar, so that two in a row stay two. */
const gap = 0.4

export type TapeOptions = { readonly axis: HoursAxis; readonly mostPeople: number }

export function tape(kit: Kit, data: DayData, { axis, mostPeople }: TapeOptions): Strip {
  const people = data.day?.people.map((one) => one.person) ?? []
  const shown = people.slice(0, mostPeople)
  const more = people.length - shown.length
  const height = tapeHeight + shown.length * rowHeight + (more > 0 ? 4 : 0) + 1
  return {
    height,
    draw: (top) => [
      ...tapeDrawing(kit, axis, top),
      ...shown.flatMap((person, index) =>
        personRow(kit, data, { axis, person, top: top + tapeHeight + index * rowHeight }),
      ),
      ...(more > 0
        ? [
            textAt(
              [axis.labelX, top + height - 2],
              kit.say.sentence('paper.morePeople', { count: more }),
              'fine',
              { ink: 'ink2' },
            ),
          ]
        : []),
    ],
  }
}

/** Ticks every hour, longer every third, as on a tape measure. */
function tapeDrawing(kit: Kit, axis: HoursAxis, top: number): Drawing {
  const bottom = top + tapeHeight
  return [
    filled(corners({ x: axis.left, y: top, width: axis.right - axis.left, height: tapeHeight }), 'shade'),
    line('outline', [axis.left, top], [axis.right, top]),
    line('outline', [axis.left, bottom], [axis.right, bottom]),
    ...hourMarks(axis).flatMap((hour): Drawing => {
      const x = axis.x(hour * 60)
      return [
        line('medium', [x, bottom], [x, bottom - (hour % 3 === 0 ? 2.6 : 1.5)]),
        textAt([x, top + 3.4], hourLabel(kit, hour), 'caption', { align: 'centre' }),
      ]
    }),
  ]
}

type Row = { readonly axis: HoursAxis; readonly person: string; readonly top: number }

function personRow(kit: Kit, data: DayData, { axis, person, top }: Row): Drawing {
  const foot = top + rowHeight
  return [
    textAt(
      [axis.labelX, foot - 2.2],
      kit.setter.fit(nameOf(kit, person), 'smallStrong', axis.labelWidth),
      'smallStrong',
    ),
    ...hourMarks(axis).map((hour) =>
      inked(line('thin', [axis.x(hour * 60), top], [axis.x(hour * 60), foot]), 'rule'),
    ),
    inked(line('thin', [axis.labelX, foot], [axis.right, foot]), 'hair'),
    ...barsOf(kit, data, { axis, person, top }),
  ]
}

export const nameOf = ({ job }: Kit, person: string): string =>
  job.people.find((one) => one.id === person)?.name ?? person

/** A number that does not fit its bar stands over it; where it would touch the last one there, the list tells. */
function barsOf(kit: Kit, data: DayData, { axis, person, top }: Row): Drawing {
  const y = top + rowHeight - barHeight
  let free = Number.NEGATIVE_INFINITY
  return data.steps.flatMap((step) =>
    step.bars.flatMap((bar): Drawing => {
      if (!bar.people.includes(person)) return []
      const x = axis.x(bar.from) + gap
      const width = Math.max(0.5, axis.x(bar.to) - x - gap)
      const label = String(step.number)
      const half = kit.setter.width(label, 'grid') / 2
      const middle = x + width / 2
      const fits = 2 * half + 0.8 <= width
      const shown = fits || middle - half > free
      if (shown && !fits) free = middle + half + 0.3
      return [
        box({ x, y, width, height: barHeight }, 'medium', step.coat ? 'ink' : 'paper'),
        ...(shown
          ? [
              textAt([middle, fits ? y + barHeight / 2 + 0.95 : y - 0.6], label, 'grid', {
                align: 'centre',
                ink: step.coat && fits ? 'paper' : 'ink',
              }),
            ]
          : []),
      ]
    }),
  )
}
