/** Rain and sun, then air, dew and skin on one axis with the margin over dew hatched, then wind; every line carries its name. */
import type { AirHours } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { percent, shareOf, useHatches } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import { BandPaths, bandCurves, bandsOf, HorizonName } from './horizon-mark.tsx'
import { RainBand } from './rain-band.tsx'
import { SunBand } from './sun-band.tsx'
import { useWeather } from './use-weather.ts'
import { areaPath, type Curve, curveOf, farthest, linePath, rangeOf } from './weather-curves.ts'
import { weatherHours } from './weather-hours.ts'
import { WindBand } from './wind-band.tsx'

export type WeatherChartProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly within: Minutes
  /** That it is drawn for, px. */
  readonly width: number
  /** Whose skin is drawn. */
  readonly place: string
  /** Name of the zone whose skin it is, when one was asked about. */
  readonly of: string | undefined
}

const curvesHigh = 176
const edge = 14
/** What most sheets ask for over the dew point. */
const overDewK = 3

export const WeatherChart = (props: WeatherChartProps) => {
  const hours = weatherHours(props.plan, props.within)
  return (
    <div className="days-weather">
      <RainBand {...props} hours={hours} />
      <SunBand {...props} />
      <Curves {...props} />
      <WindBand {...props} hours={hours} />
    </div>
  )
}

const Curves = ({ view, plan, within, width, place, of }: WeatherChartProps) => {
  const { words } = view
  const behind = useWeather(view, plan)?.behind
  const hatches = useHatches(['wait'])
  const air = plan.conditions.air.find(({ key }) => key === place)
  const curves = air && curvesOf(air, within)
  const bands = air && bandsOf(behind, within)
  const range = curves && rangeOf([curves.air, curves.dew, curves.skin, ...bandCurves(bands)])
  if (!curves || !range)
    return (
      <p className="days-none">{words.sentence(air ? 'daysscreen.noWeather' : 'daysscreen.weatherNone')}</p>
    )
  const scale = {
    ...within,
    width,
    top: edge,
    bottom: curvesHigh - edge,
    least: range.least,
    most: range.most,
  }
  const over = curves.dew.map(({ minute, value }) => ({ minute, value: value + overDewK }))
  const label = words.sentence('daysscreen.chart', {
    ...{ airLeastC: least(curves.air), airMostC: most(curves.air) },
    ...{ dewLeastC: least(curves.dew), dewMostC: most(curves.dew) },
    ...{ skinLeastC: least(curves.skin), skinMostC: most(curves.skin) },
  })
  const apart = farthest(curves.skin, curves.air)
  const y = (value: number): number =>
    scale.bottom - ((value - range.least) / (range.most - range.least)) * (scale.bottom - scale.top)
  return (
    <svg className="days-curves" width="100%" height={curvesHigh} role="img" aria-label={label}>
      {hatches.defs}
      {range.ticks.map((value) => (
        <g key={value}>
          <line x1="0" x2="100%" y1={y(value)} y2={y(value)} stroke="var(--rule)" />
          <text x="4" y={y(value) - 3} className="days-weather-tick">
            {words.figure('airC', value)}
          </text>
        </g>
      ))}
      {/* Stretched to the width it gets; its lines keep their own. */}
      <svg
        width="100%"
        height={curvesHigh}
        viewBox={`0 0 ${width} ${curvesHigh}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <BandPaths bands={bands} scale={scale} />
        <path d={areaPath(curves.dew, over, scale)} fill={hatches.fill('wait')} />
        <path d={linePath(curves.dew, scale)} className="days-line-dew" />
        <path d={linePath(curves.skin, scale)} className="days-line-skin" />
        <path d={linePath(curves.air, scale)} className="days-line-air" />
      </svg>
      <Name
        curve={curves.skin}
        at={apart.at}
        {...{ scale, y }}
        text={skinName(plan, of, words)}
        dy={apart.over ? -8 : 16}
      />
      <Name curve={curves.air} at={0.5} {...{ scale, y }} text={labelOf('daysScreen.air')} dy={-8} />
      <Name curve={curves.dew} at={0.62} {...{ scale, y }} text={labelOf('daysScreen.dew')} dy={16} />
      <Name
        curve={over}
        at={0.8}
        {...{ scale, y }}
        text={words.sentence('daysscreen.overDew', { leastK: overDewK })}
        dy={-4}
      />
      <HorizonName {...{ plan, within }} y={edge} />
    </svg>
  )
}

/** In the open each side has a skin of its own: the chart shows that of the zone asked about, else the deck's. */
const skinName = (plan: ShownPlan, of: string | undefined, words: JobView['words']): string => {
  if (!hasSides(plan)) return labelOf('daysScreen.skin')
  return of === undefined ? labelOf('daysScreen.deckSkin') : words.sentence('daysscreen.skinOf', { zone: of })
}

const hasSides = ({ conditions }: ShownPlan): boolean =>
  conditions.air.some(({ key }) => key !== 'boat' && key !== 'indoors')

const least = (curve: Curve): number => Math.min(...curve.map(({ value }) => value))
const most = (curve: Curve): number => Math.max(...curve.map(({ value }) => value))

function curvesOf(air: AirHours, within: Minutes) {
  const curve = (values: readonly number[]): Curve =>
    curveOf({ firstMinute: air.firstMinute, values }, within)
  return { air: curve(air.airC), dew: curve(air.dewC), skin: curve(air.surfaceC) }
}

type NameProps = {
  readonly curve: Curve
  /** Share of the curve's hours at which its name stands. */
  readonly at: number
  readonly text: string
  readonly dy: number
  readonly scale: Minutes
  readonly y: (value: number) => number
}

const Name = ({ curve, at, text, dy, scale, y }: NameProps) => {
  const point = curve[Math.floor(curve.length * at)]
  if (!point) return null
  const x = shareOf(point.minute, { fromMs: scale.fromMinute, toMs: scale.toMinute })
  return (
    <text x={percent(x)} y={y(point.value) + dy} textAnchor="middle" className="days-weather-name">
      {text}
    </text>
  )
}
