/** Dark and the evening stop over the hours of the weather. */

import { Temporal } from 'temporal-polyfill'
import {
  type Daylight,
  daylight,
  type HourlySeries,
  hourMs,
  type LightLimits,
  lightLimits,
  type Shelter,
  shelters,
  startOfHour,
  usualStopHours,
} from '#core/climate'
import type { Note } from '#core/note'
import type { Work } from '#job'
import { knownZone } from './known-zone.ts'
import type { Stage } from './remember.ts'

type Place = Work['place']

export type LightInput = {
  readonly weather: HourlySeries
  readonly latitude: Place['latitude']
  readonly longitude: Place['longitude']
}

/** Undefined columns where nobody knows where the boat stands. */
export const hoursLight: Stage<LightInput, Partial<Daylight>> = {
  name: 'conditions daylight',
  run: ({ weather, latitude, longitude }) =>
    latitude && longitude
      ? daylight({ series: weather, place: { latitude: latitude.value, longitude: longitude.value } })
      : {},
  fresh: true,
}

export type StopInput = {
  readonly weather: HourlySeries
  readonly light: Partial<Daylight>
  readonly eveningStop: Place['eveningStop']
  readonly timeZone: string
}

export type EveningStop = {
  /** How long after the stop each hour ends, h; negative before it, and NaN where there is none. */
  readonly pastStopHours?: Float64Array
  readonly eveningEffect: 'risky' | 'no'
}

/** By the clock where somebody has set it, else so long before sunset. */
export const eveningStops: Stage<StopInput, EveningStop> = {
  name: 'conditions evening',
  run: ({ weather, light, eveningStop, timeZone }) => {
    if (eveningStop !== undefined)
      return { pastStopHours: pastClock(weather, { eveningStop, timeZone }), eveningEffect: 'no' }
    const { toSunsetHours } = light
    return {
      eveningEffect: 'risky',
      ...(toSunsetHours ? { pastStopHours: toSunsetHours.map((left) => usualStopHours - left) } : {}),
    }
  },
  fresh: true,
}

/** A day is over at midnight: the hours after it belong to the next morning. */
function pastClock(
  weather: HourlySeries,
  { eveningStop, timeZone }: { readonly eveningStop: string; readonly timeZone: string },
): Float64Array {
  const past = new Float64Array(weather.hours).fill(Number.NaN)
  const zone = knownZone(timeZone)
  const plainTime = Temporal.PlainTime.from(eveningStop)
  const endMs = startOfHour(weather, weather.hours)
  let date = Temporal.Instant.fromEpochMilliseconds(weather.startMs).toZonedDateTimeISO(zone).toPlainDate()
  for (;;) {
    const fromMs = date.toZonedDateTime(zone).epochMilliseconds
    if (fromMs >= endMs) return past
    const stopMs = date.toZonedDateTime({ timeZone: zone, plainTime }).epochMilliseconds
    const next = date.add({ days: 1 })
    const toMs = next.toZonedDateTime(zone).epochMilliseconds
    const first = Math.max(0, Math.ceil((fromMs - weather.startMs) / hourMs))
    const last = Math.min(weather.hours, Math.ceil((toMs - weather.startMs) / hourMs))
    for (let hour = first; hour < last; hour++)
      past[hour] = (startOfHour(weather, hour) + hourMs - stopMs) / hourMs
    date = next
  }
}

export type LimitsInput = {
  readonly weather: HourlySeries
  readonly light: Partial<Daylight>
  readonly evening: EveningStop
  readonly lit: boolean
}

/** Lamps do away with the dark, a roof with the evening. */
export const lightLimitsUnder = (shelter: Shelter): Stage<LimitsInput, LightLimits> => ({
  name: `conditions light ${shelter}`,
  run: ({ weather, light, evening: { pastStopHours, eveningEffect }, lit }) =>
    lightLimits({
      hours: weather.hours,
      darkHours: lit ? undefined : light.darkHours,
      pastStopHours: shelters[shelter].openToSky ? pastStopHours : undefined,
      eveningEffect,
    }),
  fresh: true,
})

/** Whether lamps light the work where the job does not say: under a roof with walls there are some. Assumed. */
export const lampsOver = (shelter: string, told: Place['lamps']): boolean =>
  told ?? (shelter === 'shed' || shelter === 'heated shed')

/** What is taken for granted of light and evening. */
export function lightNotes({ shelter, lamps, latitude, longitude, eveningStop }: Place): readonly Note[] {
  const lit: Note = {
    code: 'conditions.lampsAssumed',
    severity: 'assumed',
    data: { lamps: lampsOver(shelter, lamps) ? 'yes' : 'no' },
    source: 'assumed',
  }
  const stop: Note = {
    code: 'conditions.stopAssumed',
    severity: 'assumed',
    data: { stopHours: usualStopHours },
    source: 'assumed',
  }
  const known = latitude !== undefined && longitude !== undefined
  return [
    ...(lamps === undefined ? [lit] : []),
    ...(shelter === 'open' && eveningStop === undefined && known ? [stop] : []),
  ]
}
