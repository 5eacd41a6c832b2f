/** Wind as barbs, one for every few hours; a staff of dots where nobody knows where it comes from. */
import { read } from '#units'
import { cellOf, type JobView } from '../../job/job-view.ts'
import { percent, shareOf } from '../../parts/index.ts'
import type { BandProps } from './rain-band.tsx'
import type { WeatherHour, Wind } from './weather-hours.ts'
import { barbCounts, barbShape } from './wind-barb.ts'

const windHigh = 64

/** Closer than this they would run into each other, px. */
const apart = 46
const steps = [1, 2, 3, 6, 12] as const

export const WindBand = ({ view, hours, within, width }: BandProps) => {
  const hourPx = (width / (within.toMinute - within.fromMinute)) * 60
  const step = steps.find((one) => one * hourPx >= apart) ?? 24
  const shown = hours.filter((_, at) => at % step === Math.floor(step / 2))
  const south = isSouth(view)
  return (
    <svg
      className="days-wind"
      width="100%"
      height={windHigh}
      role="img"
      aria-label={view.words.sentence('daysscreen.windChart', windTotals(hours))}
    >
      {shown.map(({ minute, wind }) => (
        <svg
          key={minute}
          x={percent(shareOf(minute + 30, { fromMs: within.fromMinute, toMs: within.toMinute }))}
          y={windHigh / 2}
          overflow="visible"
          aria-hidden="true"
        >
          <Barb wind={wind} south={south} />
        </svg>
      ))}
    </svg>
  )
}

/** At the origin, 30 px or less to every side. */
export const Barb = ({ wind, south }: { readonly wind: Wind | undefined; readonly south: boolean }) => {
  if (wind === undefined) return <circle className="days-not-known" r="4" />
  const counts = barbCounts(wind.mps)
  if (counts.calm) return <circle className="days-wind-calm" r="5" />
  const { staff, feathers, pennants } = barbShape({ counts, fromRad: wind.fromRad ?? 0, south })
  return (
    <>
      <path className={wind.fromRad === undefined ? 'days-wind-guessed' : 'days-wind-line'} d={staff} />
      <path className="days-wind-line" d={feathers} />
      <path className="days-wind-pennant" d={pennants} />
      <circle className="days-wind-place" r="2.5" />
    </>
  )
}

function windTotals(hours: readonly WeatherHour[]) {
  const known = hours.flatMap(({ wind }) => (wind === undefined ? [] : [wind.mps]))
  const unknown = hours.length - known.length
  return known.length === 0
    ? { unknown, leastMps: 0, mostMps: 0, known: 0 }
    : { unknown, leastMps: Math.min(...known), mostMps: Math.max(...known), known: known.length }
}

/** North where nobody says. */
function isSouth(view: Pick<JobView, 'raw'>): boolean {
  const text = cellOf(view, { part: 'work', section: 'place', key: 'latitude' })
  const latitude = text === '' ? undefined : read(text, 'angle')
  return latitude?.ok === true && latitude.quantity.value < 0
}
