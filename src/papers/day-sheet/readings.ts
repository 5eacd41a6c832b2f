/** Air, dew and surface over the hours: the curves, and the figures under them; the dew margin is hatched. */
import type { Plan } from '#plan'
import type { Kit } from '../kit.ts'
import type { Pen } from '../pens.ts'
import { type Drawing, hatched, inked, line, type Point, textAt } from '../shapes.ts'
import type { Strip } from '../strips.ts'
import { minuteAt } from './clock-minute.ts'
import type { DayData } from './day-data.ts'
import { type HoursAxis, hourMarks } from './hours-axis.ts'

type AirHours = Plan['conditions']['air'][number]

export type Readings = {
  readonly hours: readonly number[]
  readonly airC: readonly number[]
  readonly dewC: readonly number[]
  readonly surfaceC: readonly number[]
  readonly marginK: number
}

/** Of the place that all of the day's paint is on, else of the boat as a whole; undefined when no weather covers the day. */
export function readingsOf(kit: Kit, data: DayData, axis: HoursAxis): Readings | undefined {
  const air = airOf(kit, data)
  if (!air) return undefined
  const hours = hourMarks(axis)
  const at = hours.map((hour) => Math.floor((minuteAt(kit, data, hour * 60) - air.firstMinute) / 60))
  const pick = (series: readonly number[]): readonly number[] =>
    at.map((index) => series[index] ?? Number.NaN)
  const airC = pick(air.airC)
  if (airC.every(Number.isNaN)) return undefined
  return { hours, airC, dewC: pick(air.dewC), surfaceC: pick(air.surfaceC), marginK: marginOf(kit, data) }
}

function airOf({ plan }: Kit, { steps }: DayData): AirHours | undefined {
  const { air, zones } = plan.conditions
  const coats = steps.filter((step) => step.coat)
  const places = new Set(coats.map(({ step }) => zones.find(({ key }) => key === step?.hoursKey)?.place))
  const [place] = places.size === 1 ? places : ['boat']
  return air.find(({ key }) => key === place) ?? air[0]
}

/** The widest margin over dew that a product of the day asks for. */
function marginOf({ plan }: Kit, { steps }: DayData): number {
  const sheets = new Set(steps.flatMap(({ step }) => step?.sheet ?? []))
  const margins = plan.buildUps.sheets.flatMap((sheet) =>
    sheets.has(sheet.id) ? [sheet.dewMarginK.value] : [],
  )
  return Math.max(3, ...margins)
}

type Curve = { readonly key: 'air' | 'dew' | 'skin'; readonly values: readonly number[]; readonly pen: Pen }

const curvesOf = ({ airC, dewC, surfaceC }: Readings): readonly Curve[] => [
  { key: 'air', values: airC, pen: 'air' },
  { key: 'dew', values: dewC, pen: 'dew' },
  { key: 'skin', values: surfaceC, pen: 'skin' },
]

export type ChartOptions = { readonly axis: HoursAxis; readonly height: number }

export function readingsChart(kit: Kit, readings: Readings, { axis, height }: ChartOptions): Strip {
  const scale = verticalScale(kit, readings, height)
  return {
    height: height + 3,
    draw: (top) => {
      const y = (value: number): number => top + 1.5 + scale.y(value)
      return [
        ...scale.ticks.flatMap(
          (tick): Drawing => [
            inked(line('thin', [axis.left, y(tick)], [axis.right, y(tick)]), 'rule'),
            textAt([axis.left - 2, y(tick) + 0.95], kit.say.figure('airC', tick), 'fine', {
              align: 'right',
              ink: 'ink2',
            }),
          ],
        ),
        ...hourMarks(axis).map((hour) =>
          inked(
            line('thin', [axis.x(hour * 60), top + 1.5], [axis.x(hour * 60), top + 1.5 + height]),
            'rule',
          ),
        ),
        ...marginBand(readings, axis, y),
        ...curvesOf(readings).flatMap(({ values, pen }) =>
          runs(values, readings.hours, axis, y).map((points) => line(pen, ...points)),
        ),
        ...curveLabels(kit, readings, axis, y),
      ]
    },
  }
}

/** Five degrees a line, ten on the other scale, with room over and under. */
function verticalScale({ job }: Kit, { airC, dewC, surfaceC }: Readings, height: number) {
  const values = [...airC, ...dewC, ...surfaceC].filter(Number.isFinite)
  const step = job.units === 'us' ? 50 / 9 : 5
  const zero = job.units === 'us' ? -160 / 9 : 0
  const low = zero + step * Math.floor((Math.min(...values) - 0.5 - zero) / step)
  const high = zero + step * Math.ceil((Math.max(...values) + 0.5 - zero) / step)
  const count = Math.round((high - low) / step)
  const every = Math.max(1, Math.ceil(count / 5))
  return {
    y: (value: number): number => (height * (high - value)) / (high - low),
    ticks: Array.from({ length: Math.floor(count / every) + 1 }, (_, k) => low + k * every * step),
  }
}

type Y = (value: number) => number

/** Stretches of a curve without a gap. */
function runs(
  values: readonly number[],
  hours: readonly number[],
  axis: HoursAxis,
  y: Y,
): readonly (readonly Point[])[] {
  const all: Point[][] = [[]]
  values.forEach((value, index) => {
    if (Number.isFinite(value)) all.at(-1)?.push([axis.x(hours[index]! * 60), y(value)])
    else if (all.at(-1)?.length) all.push([])
  })
  return all.filter((points) => points.length > 1)
}

function marginBand({ dewC, hours, marginK }: Readings, axis: HoursAxis, y: Y): Drawing {
  const [dew] = runs(dewC, hours, axis, y)
  const [over] = runs(
    dewC.map((value) => value + marginK),
    hours,
    axis,
    y,
  )
  return dew && over ? [hatched([...dew, ...[...over].reverse()], 'dew', 'hair')] : []
}

/** At the right end of each curve, pushed apart where they would touch. */
function curveLabels(kit: Kit, readings: Readings, axis: HoursAxis, y: Y): Drawing {
  const ends = curvesOf(readings)
    .flatMap(({ key, values }) => {
      const last = values.findLast(Number.isFinite)
      return last === undefined ? [] : [{ key, at: y(last) }]
    })
    .sort((a, b) => a.at - b.at)
  let least = Number.NEGATIVE_INFINITY
  return ends.map(({ key, at }) => {
    const place = Math.max(at + 0.9, least)
    least = place + 3
    return textAt([axis.right + 1.2, place], kit.say.label(`paperCurve.${key}`), 'grid')
  })
}

/** The same as figures, an hour a column. */
export function readingsTable(kit: Kit, readings: Readings, axis: HoursAxis): Strip {
  const row = 3.9
  const curves = curvesOf(readings)
  return {
    height: row * curves.length + 1.4,
    draw: (top) =>
      curves.flatMap(({ key, values }, index): Drawing => {
        const y = top + row * index + 3
        return [
          textAt(
            [axis.labelX, y],
            `${kit.say.label(`paperReading.${key}`)} ${kit.job.units === 'us' ? '°F' : '°C'}`,
            'fine',
          ),
          ...values.flatMap(
            (value, column): Drawing =>
              Number.isFinite(value)
                ? [
                    textAt(
                      [axis.x(readings.hours[column]! * 60), y],
                      bare(kit.say.figure('airC', value)),
                      'fine',
                      { align: 'centre' },
                    ),
                  ]
                : [],
          ),
          ...(index < curves.length - 1
            ? [inked(line('thin', [axis.labelX, y + 1], [axis.right, y + 1]), 'rule')]
            : []),
        ]
      }),
  }
}

/** The figure without its unit, which stands on the scale above. */
const bare = (text: string): string => text.split('\u2009')[0] ?? text
