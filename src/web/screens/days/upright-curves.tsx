/** Air, dew and the skin of the zone down a tape that stands, over the sun: warmer is further right. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { percent, shareOf } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import { BandPaths, bandCurves, bandsOf } from './horizon-mark.tsx'
import type { ShownDay } from './shown-days.ts'
import { sunCurve } from './sun-band.tsx'
import { useWeather } from './use-weather.ts'
import { areaPath, type Curve, curveOf, linePath, rangeOf } from './weather-curves.ts'

export type UprightCurvesProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly days: readonly ShownDay[]
  readonly within: Minutes
  /** Whose skin it is. */
  readonly place: string
  /** Of the whole tape, px. */
  readonly high: number
}

const wide = 72
const edge = 6
/** Width of the hill of the sun at its most, px and W/m². */
const sunWide = 30
const sunMostWm2 = 1100

export const UprightCurves = ({ view, plan, days, within, place, high }: UprightCurvesProps) => {
  const { words } = view
  const weather = useWeather(view, plan)
  const air = plan.conditions.air.find(({ key }) => key === place)
  if (!air) return null
  const curve = (values: readonly number[]): Curve =>
    curveOf({ firstMinute: air.firstMinute, values }, within)
  const curves = { air: curve(air.airC), dew: curve(air.dewC), skin: curve(air.surfaceC) }
  const bands = bandsOf(weather?.behind, within)
  const range = rangeOf([curves.air, curves.dew, curves.skin, ...bandCurves(bands)])
  if (!range) return null
  // Drawn lying and laid over its corner, so that time runs down and warmth to the right.
  const scale = { ...within, width: high, bottom: edge, top: wide - edge, ...range }
  const sun = { ...within, width: high, bottom: 0, top: sunWide, least: 0, most: sunMostWm2 }
  const hill = weather ? sunCurve(weather, within) : []
  const x = (value: number): number =>
    edge + ((value - range.least) / (range.most - range.least)) * (wide - 2 * edge)
  const of = (one: Curve, pick: (...values: number[]) => number): number =>
    pick(...one.map(({ value }) => value))
  const label = words.sentence('daysscreen.chart', {
    ...{ airLeastC: of(curves.air, Math.min), airMostC: of(curves.air, Math.max) },
    ...{ dewLeastC: of(curves.dew, Math.min), dewMostC: of(curves.dew, Math.max) },
    ...{ skinLeastC: of(curves.skin, Math.min), skinMostC: of(curves.skin, Math.max) },
  })
  return (
    <svg className="days-upright-curves days-curves" width={wide} height={high} role="img" aria-label={label}>
      <g transform="matrix(0 1 1 0 0 0)">
        <path d={areaPath(hill.map(ground), hill, sun)} className="days-sun-hill" />
        <BandPaths bands={bands} scale={scale} />
        <path d={linePath(curves.dew, scale)} className="days-line-dew" />
        <path d={linePath(curves.skin, scale)} className="days-line-skin" />
        <path d={linePath(curves.air, scale)} className="days-line-air" />
      </g>
      {days.map(({ date, fromMinute }) => (
        <g key={date}>
          {[range.least, range.most].map((value) => (
            <text
              key={value}
              x={x(value)}
              y={percent(shareOf(fromMinute, { fromMs: within.fromMinute, toMs: within.toMinute }))}
              dy="14"
              textAnchor={value === range.least ? 'start' : 'end'}
              className="days-weather-name"
            >
              {words.figure('airC', value)}
            </text>
          ))}
        </g>
      ))}
    </svg>
  )
}

const ground = ({ minute }: Curve[number]): Curve[number] => ({ minute, value: 0 })

/** What each line is, for under the tape. */
export const CurvesKey = () => (
  <ul className="days-key">
    {(['air', 'dew', 'skin'] as const).map((name) => (
      <li key={name}>
        <svg className="days-curves" width="40" height="12" aria-hidden="true">
          <path d="M0 6H40" className={`days-line-${name}`} />
        </svg>
        {labelOf(`daysScreen.${name}`)}
      </li>
    ))}
    <li>
      <svg width="24" height="14" aria-hidden="true">
        <path d="M1 13Q12 -8 23 13Z" className="days-sun-hill" />
      </svg>
      {labelOf('daysScreen.sun')}
    </li>
  </ul>
)
