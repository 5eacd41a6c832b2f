/** Height is permission: a good hour stands tall and solid, a risky one lower and hatched, a forbidden one lies flat. */
import type { Plan, WorkStep } from '#plan'
import type { Kit } from '../kit.ts'
import { corners, type Drawing, filled, hatched, inked, line, textAt } from '../shapes.ts'
import type { Strip } from '../strips.ts'
import { minuteAt } from './clock-minute.ts'
import type { DayData } from './day-data.ts'
import { type HoursAxis, hourMarks } from './hours-axis.ts'

type ZoneHours = Plan['conditions']['zones'][number]
type Verdict = ZoneHours['verdicts'][number]

const rowHeight = 8.4
const tall = 6
const low = 3.8

export type PaintHours = { readonly names: readonly string[]; readonly verdicts: readonly Verdict[] }

/** The layers of this day with their hours; layers with the same hours share a strip. */
export function paintHoursOf(kit: Kit, data: DayData, axis: HoursAxis): readonly PaintHours[] {
  const strips = new Map<string, PaintHours>()
  for (const { step, coat } of data.steps) {
    const zone = kit.plan.conditions.zones.find(({ key }) => key === step?.hoursKey)
    if (!coat || !step || !zone) continue
    const verdicts = hourMarks(axis)
      .slice(0, -1)
      .map((hour) => verdictAt(zone, minuteAt(kit, data, hour * 60)))
    const key = verdicts.join()
    const names = new Set([...(strips.get(key)?.names ?? []), layerName(kit, step)])
    strips.set(key, { names: [...names], verdicts })
  }
  return [...strips.values()]
}

const layerName = ({ plan }: Kit, step: WorkStep): string =>
  plan.buildUps.layers.find((layer) => layer.zone === step.zone && layer.layer === step.layer)?.name ??
  step.sheet ??
  step.kind

const verdictAt = (hours: ZoneHours, minute: number): Verdict =>
  hours.verdicts[Math.floor((minute - hours.firstMinute) / 60)] ?? 'unknown'

export function paintStrip(kit: Kit, { names, verdicts }: PaintHours, axis: HoursAxis): Strip {
  const lines = kit.setter.wrap(names.join(', '), 'fine', axis.labelWidth)
  const shown =
    lines.length <= 2 ? lines : [lines[0]!, kit.setter.fit(lines.slice(1).join(' '), 'fine', axis.labelWidth)]
  return {
    height: rowHeight,
    draw: (top) => {
      const foot = top + rowHeight - 0.6
      return [
        ...shown.map((text, index) =>
          textAt([axis.labelX, foot - 0.6 - (shown.length - 1 - index) * 3.2], text, 'fine'),
        ),
        line('thin', [axis.left, foot], [axis.right, foot]),
        ...verdicts.flatMap((verdict, index) => {
          const hour = axis.from + index
          return hourDrawing(verdict, { from: axis.x(hour * 60), to: axis.x(hour * 60 + 60), foot, scale: 1 })
        }),
      ]
    },
  }
}

type Span = { readonly from: number; readonly to: number; readonly foot: number; readonly scale: number }

function hourDrawing(verdict: Verdict, { from, to, foot, scale }: Span): Drawing {
  const block = (height: number) => corners({ x: from, y: foot - height, width: to - from, height })
  switch (verdict) {
    case 'go':
      return [
        filled(block(tall * scale), 'go'),
        line('outline', [from, foot - tall * scale], [to, foot - tall * scale]),
      ]
    case 'risky':
      return [
        hatched(block(low * scale), 'risky', 'ink'),
        inked({ kind: 'area', points: block(low * scale), pen: 'thin' }, 'ink'),
      ]
    case 'unknown':
      return [{ kind: 'area', points: block(low * scale), pen: 'ghost', ink: 'ink' }]
    case 'no':
      return []
  }
}

/** What the four heights mean, under the strips. */
export function verdictKey(kit: Kit, axis: HoursAxis): Strip {
  const verdicts: readonly Verdict[] = ['go', 'risky', 'no', 'unknown']
  return {
    height: 4.8,
    draw: (top) => {
      const foot = top + 4.4
      let x = axis.left
      return verdicts.flatMap((verdict): Drawing => {
        const from = x
        const label = kit.say.label(`paperVerdict.${verdict}`)
        x += 9 + kit.setter.width(label, 'fine') + 6
        return [
          line('thin', [from, foot], [from + 7, foot]),
          ...hourDrawing(verdict, { from, to: from + 7, foot, scale: 0.55 }),
          textAt([from + 8.5, foot - 0.6], label, 'fine', { ink: 'ink2' }),
        ]
      })
    },
  }
}
