/** One stroke of rain with its drop, and what the rain of some hours comes to. */
import type { Minutes } from '../hour-spans.ts'
import type { Rain, WeatherHour } from './weather-hours.ts'

const longest = 30

/** How far a stroke hangs down, px: by the root of what falls, so that drizzle is still seen; 0 where none is drawn. */
export function rainLong(rain: Rain): number {
  if (rain.kind === 'fell') return Math.min(longest, Math.round(5 + 9 * Math.sqrt(rain.mm)))
  return rain.kind === 'chance' ? 12 : 0
}

/** Stretches of hours whose rain nobody knows. */
export function unknownRain(hours: readonly WeatherHour[]): readonly Minutes[] {
  const spans: { fromMinute: number; toMinute: number }[] = []
  for (const { minute, rain } of hours) {
    if (rain.kind !== 'unknown') continue
    const last = spans.at(-1)
    if (last?.toMinute === minute) last.toMinute = minute + 60
    else spans.push({ fromMinute: minute, toMinute: minute + 60 })
  }
  return spans
}

export const rainTotals = (hours: readonly WeatherHour[]) => ({
  count: hours.filter(({ rain }) => rain.kind === 'fell').length,
  rainMm: hours.reduce((sum, { rain }) => sum + (rain.kind === 'fell' ? rain.mm : 0), 0),
  chances: hours.filter(({ rain }) => rain.kind === 'chance').length,
  unknown: hours.filter(({ rain }) => rain.kind === 'unknown').length,
})

type DropProps = {
  readonly kind: Rain['kind']
  readonly long: number
  readonly wide: number
  readonly transform?: string
}

/** Filled where it falls; an outline of dashes where it may. */
export const Drop = ({ kind, long, wide, transform }: DropProps) => (
  <g transform={transform} className={kind === 'chance' ? 'days-rain-chance' : 'days-rain-falls'}>
    <rect x={-wide / 2} y="0" width={wide} height={long} />
    <path d={`M0 ${long + 2}l3 6h-6z`} />
  </g>
)
