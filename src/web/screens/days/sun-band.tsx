/** Sun and sky on a level surface, hour by hour, as a filled hill inside ink. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import type { BandProps } from './rain-band.tsx'
import { useWeather } from './use-weather.ts'
import { type Curve, curveOf, linePath } from './weather-curves.ts'

type SunBandProps = Omit<BandProps, 'hours'> & { readonly plan: ShownPlan }

const high = 44
/** The full height; the sun on a level surface passes it nowhere for long, W/m². */
const mostWm2 = 1100

export const SunBand = ({ view, plan, within, width }: SunBandProps) => {
  const weather = useWeather(view, plan)
  // It fetches itself, so its place is kept until the figures are there.
  const curve = weather ? sunCurve(weather, within) : []
  const most = curve.reduce((best, point) => (point.value > best.value ? point : best), none)
  return (
    <svg
      className="days-sun"
      width="100%"
      height={high}
      role="img"
      aria-label={sunLabel(view, curve, most.value)}
    >
      <svg
        width="100%"
        height={high}
        viewBox={`0 0 ${width} ${high}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path d={hillPath(curve, { ...within, width })} className="days-sun-hill" />
      </svg>
    </svg>
  )
}

const none = { minute: 0, value: 0 }

function sunLabel({ words }: JobView, curve: Curve, mostWPerM2: number): string {
  if (curve.length === 0) return labelOf('daysScreen.sunUnknown')
  return words.sentence('daysscreen.sun', { mostWPerM2: Math.round(mostWPerM2) })
}

/** A mean over an hour stands at its middle. */
export const sunCurve = (
  { firstMinute, sunWm2 }: { readonly firstMinute: number; readonly sunWm2: readonly number[] },
  within: Minutes,
): Curve => curveOf({ firstMinute: firstMinute + 30, values: sunWm2 }, within)

/** One closed hill from the first hour to the last; over a night it lies on the ground. */
export function hillPath(curve: Curve, { width, ...within }: Minutes & { readonly width: number }): string {
  if (curve.length === 0) return ''
  const scale = { ...within, width, top: 2, bottom: high - 1, least: 0, most: mostWm2 }
  const ends = [curve[0]!, curve.at(-1)!].map(({ minute }) => ({ minute, value: 0 }))
  const hill = [ends[0]!, ...curve, ends[1]!]
  // Filled as one, so no pen is lifted.
  return `${linePath(hill, scale).replaceAll(/(?!^)M/g, 'L')}Z`
}
