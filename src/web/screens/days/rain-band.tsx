/** Rain hangs from the top as strokes with drops, as long as it is heavy; where nobody knows, a dotted box hangs there. */
import type { JobView } from '../../job/job-view.ts'
import { percent, shareOf } from '../../parts/index.ts'
import type { Minutes } from '../hour-spans.ts'
import { Drop, rainLong, rainTotals, unknownRain } from './rain-strokes.tsx'
import type { WeatherHour } from './weather-hours.ts'

export type BandProps = {
  readonly view: JobView
  readonly hours: readonly WeatherHour[]
  readonly within: Minutes
  /** That it is drawn for, px; what is placed stands at its share of whatever it gets. */
  readonly width: number
}

const rainHigh = 44

export const RainBand = ({ view: { words }, hours, within, width }: BandProps) => {
  const axis = { fromMs: within.fromMinute, toMs: within.toMinute }
  const wide = Math.min(7, Math.max(2, (width / (within.toMinute - within.fromMinute)) * 60 * 0.6))
  return (
    <svg
      className="days-rain"
      width="100%"
      height={rainHigh}
      role="img"
      aria-label={words.sentence('daysscreen.rain', rainTotals(hours))}
    >
      {unknownRain(hours).map(({ fromMinute, toMinute }) => (
        <rect
          key={`unknown ${fromMinute}`}
          className="days-not-known"
          x={percent(shareOf(fromMinute, axis))}
          y="1"
          width={percent(shareOf(toMinute, axis) - shareOf(fromMinute, axis))}
          height="11"
        />
      ))}
      {hours.map(({ minute, rain }) => {
        const long = rainLong(rain)
        return long === 0 ? null : (
          <svg key={minute} x={percent(shareOf(minute + 30, axis))} overflow="visible" aria-hidden="true">
            <Drop kind={rain.kind} long={long} wide={wide} />
          </svg>
        )
      })}
    </svg>
  )
}
