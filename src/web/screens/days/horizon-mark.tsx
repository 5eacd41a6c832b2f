/** Where the forecast ends: a line through all that is drawn, and behind it how far apart the days like each date lie. */
import type { BehindSpread } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { percent, shareOf } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import { areaPath, type Curve, curveOf, type Scale } from './weather-curves.ts'

type Within = { readonly plan: ShownPlan; readonly within: Minutes }

/** Minute of the horizon where it lies in these days; undefined before them, behind them, and without one. */
export function horizonIn({ plan: { conditions }, within }: Within): number | undefined {
  const minute = conditions.horizon?.forecastUntilMinute
  return minute !== undefined && minute > within.fromMinute && minute < within.toMinute ? minute : undefined
}

/** Every hour is of a typical year. */
export const isAlone = ({ conditions: { horizon, firstMinute } }: ShownPlan): boolean =>
  horizon !== undefined && horizon.forecastUntilMinute <= firstMinute

const reaches = ({ plan: { conditions }, within }: Within): boolean =>
  conditions.horizon !== undefined && conditions.horizon.forecastUntilMinute < within.toMinute

/** What stands behind the line, in words: only where some of it is shown. */
export const HorizonSay = ({ view, plan, within }: Within & { readonly view: JobView }) => {
  const { words, timeZone } = view
  const { horizon } = plan.conditions
  if (!horizon || !reaches({ plan, within })) return null
  return (
    <p className="days-horizon-say">
      {words.sentence(isAlone(plan) ? 'daysscreen.typicalOnly' : 'daysscreen.horizon', {
        untilAtMs: horizon.forecastUntilMinute * 60_000,
        fromAtMs: horizon.typicalFromMinute * 60_000,
        timeZone,
      })}
    </p>
  )
}

/** Over a tape that lies. */
export const HorizonLine = ({ plan, within }: Within) => {
  const minute = horizonIn({ plan, within })
  if (minute === undefined) return null
  const share = shareOf(minute, { fromMs: within.fromMinute, toMs: within.toMinute })
  return (
    <div className="days-now" aria-hidden="true">
      <div className="days-horizon" style={{ left: percent(share) }} />
    </div>
  )
}

/** Over a tape that stands. */
export const UprightHorizon = ({ plan, within }: Within) => {
  const minute = horizonIn({ plan, within })
  if (minute === undefined) return null
  const top = percent(shareOf(minute, { fromMs: within.fromMinute, toMs: within.toMinute }))
  return (
    <div className="days-upright-horizon" style={{ top }} aria-hidden="true">
      <span className="days-horizon-name">{labelOf('daysScreen.forecastEnds')}</span>
    </div>
  )
}

/** Its name in the drawing of the weather, on the side where there is room. */
export const HorizonName = ({ plan, within, y }: Within & { readonly y: number }) => {
  const minute = horizonIn({ plan, within })
  if (minute === undefined) return null
  const share = shareOf(minute, { fromMs: within.fromMinute, toMs: within.toMinute })
  const left = share > 0.8
  return (
    <text
      x={percent(share)}
      y={y}
      dx={left ? -6 : 6}
      textAnchor={left ? 'end' : 'start'}
      className="days-weather-name"
    >
      {labelOf('daysScreen.forecastEnds')}
    </text>
  )
}

export type Bands = Readonly<Record<'air' | 'dew', { readonly low: Curve; readonly high: Curve }>>

/** Curves of the 10th and the 90th percentile, as far as they lie in these days. */
export function bandsOf(behind: BehindSpread | undefined, within: Minutes): Bands | undefined {
  if (!behind) return undefined
  const { firstMinute, airC, dewC } = behind
  const curve = (values: readonly number[]): Curve => curveOf({ firstMinute, values }, within)
  const of = ({ low, high }: BehindSpread['airC']) => ({ low: curve(low), high: curve(high) })
  const bands = { air: of(airC), dew: of(dewC) }
  return bands.air.low.length === 0 ? undefined : bands
}

export const bandCurves = (bands: Bands | undefined): readonly Curve[] =>
  bands ? [bands.air.low, bands.air.high, bands.dew.low, bands.dew.high] : []

export const BandPaths = ({ bands, scale }: { readonly bands: Bands | undefined; readonly scale: Scale }) =>
  bands
    ? (['dew', 'air'] as const).map((name) => (
        <path
          key={name}
          d={areaPath(bands[name].low, bands[name].high, scale)}
          className={`days-band-${name}`}
        />
      ))
    : null

/** What line and bands are, where they are drawn. */
export const HorizonKey = ({ plan, within }: Within) =>
  reaches({ plan, within }) ? (
    <ul className="days-key">
      {(['air', 'dew'] as const).map((name) => (
        <li key={name}>
          <svg width="24" height="14" aria-hidden="true">
            <rect x="1" y="1" width="22" height="12" className={`days-band-${name}`} />
          </svg>
          {labelOf(`daysScreen.${name}Band`)}
        </li>
      ))}
    </ul>
  ) : null
