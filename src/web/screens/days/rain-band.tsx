/** Rain hangs from the top as strokes with drops, as long as it is heavy; where nobody knows, a dotted box hangs there. */
import type { JobView } from '../../job/job-view.ts'
import type { Minutes } from '../hour-spans.ts'
import { Drop, rainLong, rainTotals, unknownRain } from './rain-strokes.tsx'
import type { WeatherHour } from './weather-hours.ts'

export type BandProps = {
  readonly view: JobView
  readonly hours: readonly WeatherHour[]
  readonly within: Minutes
  readonly width: number
}

export const rainHigh = 44

export const RainBand = ({ view: { words }, hours, within, width }: BandProps) => {
  const pxAt = (minute: number): number =>
    ((minute - within.fromMinute) / (within.toMinute - within.fromMinute)) * width
  const wide = Math.min(7, Math.max(2, (pxAt(within.fromMinute + 60) - pxAt(within.fromMinute)) * 0.6))
  return (
    <svg
      className="days-rain"
      width={width}
      height={rainHigh}
      role="img"
      aria-label={words.sentence('daysscreen.rain', rainTotals(hours))}
    >
      {unknownRain(hours).map(({ fromMinute, toMinute }) => (
        <rect
          key={`unknown ${fromMinute}`}
          className="days-not-known"
          x={pxAt(fromMinute) + 1}
          y="1"
          width={Math.max(1, pxAt(toMinute) - pxAt(fromMinute) - 2)}
          height="11"
        />
      ))}
      {hours.map(({ minute, rain }) => {
        const long = rainLong(rain)
        return long === 0 ? null : (
          <Drop
            key={minute}
            kind={rain.kind}
            long={long}
            wide={wide}
            transform={`translate(${pxAt(minute + 30).toFixed(1)} 0)`}
          />
        )
      })}
    </svg>
  )
}
