/** Blanks to write on beside each step: what really happened, so that the log can be kept from the sheet. */
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { type Drawing, line, textAt } from '../shapes.ts'
import type { Strip } from '../strips.ts'
import type { DayStep } from './day-data.ts'

/** What every step has stands at the right end, so that the words of plain work may run on over the rest. */
const columns = [
  ['air', 10.5],
  ['humidity', 11.5],
  ['skin', 10.5],
  ['batches', 23],
  ['area', 12],
  ['start', 12],
  ['stop', 12],
] as const

type ColumnKey = (typeof columns)[number][0]

const width = columns.reduce((sum, [, share]) => sum + share, 0)

/** Where the blanks of all steps begin. */
function blanksLeft(kit: Kit): number {
  const measure = measureOf(kit.page)
  return measure.x + measure.width - width
}

/** Where the blanks of one step begin. */
export const blanksFrom = (kit: Kit, step: DayStep): number =>
  placed(kit).find(({ key }) => isAsked(step, key))?.from ?? blanksLeft(kit)

/** A coat has all of them; other work its times, and its area where it has one. */
const isAsked = (step: DayStep, key: ColumnKey): boolean =>
  step.coat || key === 'start' || key === 'stop' || (key === 'area' && step.step?.areaM2 !== undefined)

type Column = { readonly key: ColumnKey; readonly from: number; readonly to: number }

function placed(kit: Kit): readonly Column[] {
  let x = blanksLeft(kit)
  return columns.map(([key, share]) => {
    const from = x
    x += share
    return { key, from, to: x }
  })
}

export function blanksHead(kit: Kit): Strip {
  const measure = measureOf(kit.page)
  return {
    height: 5,
    draw: (top) => [
      textAt([measure.x, top + 3.2], kit.say.label('paperWrite.step'), 'grid', { ink: 'ink2' }),
      ...placed(kit).map(({ key, from }) =>
        textAt([from + 1, top + 3.2], heading(kit, key), 'grid', { ink: 'ink2' }),
      ),
      line('outline', [measure.x, top + 4.8], [measure.x + measure.width, top + 4.8]),
    ],
  }
}

export function blanks(
  kit: Kit,
  step: DayStep,
  { top, height }: { readonly top: number; readonly height: number },
): Drawing {
  const asked = placed(kit).filter(({ key }) => isAsked(step, key))
  return asked.map(({ from }) => line('thin', [from, top], [from, top + height]))
}

/** The unit stands in the head, so that only the figure is written. */
function heading({ say, job }: Kit, key: ColumnKey): string {
  const metric = job.units === 'metric'
  const units: Partial<Record<ColumnKey, string>> = {
    air: metric ? '°C' : '°F',
    skin: metric ? '°C' : '°F',
    humidity: '%',
    area: metric ? 'm²' : 'ft²',
  }
  return [say.label(`paperWrite.${key}`), units[key]].filter(Boolean).join(' ')
}
