/** How the figures of an hour came about: the weather under its shelter, the skin in it, and the dew point of its air. */
import type { Told } from './told.ts'
import {
  type AirFigure,
  given,
  minus,
  number,
  over,
  type Part,
  plus,
  times,
  type Way,
  wayOf,
  worked,
} from './way.ts'

type AirRef = { readonly place: string; readonly minute: number; readonly of: AirFigure }

export function airWay({ plan }: Told, { place, minute, of }: AirRef): Way | undefined {
  const air = plan.conditions.air.find(({ key }) => key === place)
  const hour = air ? Math.floor((minute - air.firstMinute) / 60) : -1
  const [airC, humidity, surfaceC] = [air?.airC[hour], air?.humidityShare[hour], air?.surfaceC[hour]]
  if (airC === undefined || humidity === undefined || surfaceC === undefined) return undefined
  // What is still to come nobody has measured.
  const ahead = minute * 60_000 >= plan.stamp.nowMs
  const weather = { certainty: ahead ? 'assumed' : 'measured', source: 'weather' } as const
  const warmth = given({ name: 'airC', key: 'airC', value: airC, ...weather })
  const damp = given({ name: 'humidity', key: 'share', value: humidity, ...weather })
  const skin = given({ name: 'skinC', key: 'surfaceC', value: surfaceC, certainty: 'worked' })
  const dew = dewPart(airC, damp)
  switch (of) {
    case 'humidity':
      return wayOf(damp, { parts: [damp, warmth], how: { code: 'way.weather' } })
    case 'skin':
      return wayOf(skin, { parts: [warmth, damp], how: { code: 'way.skin' } })
    case 'dew':
      return wayOf(dew, { parts: [warmth, damp, gammaPart(airC, damp)], how: { code: 'way.dew' } })
    case 'margin':
      return wayOf(worked({ name: 'margin', key: 'marginK', certainty: 'worked' }, minus(skin, dew)), {
        parts: [skin, dew, warmth, damp, gammaPart(airC, damp)],
        how: { code: 'way.dew' },
      })
  }
}

/** Coefficients hold for degrees Celsius, so the air stands in the term as a bare number. */
const gammaPart = (airC: number, humidity: Part): Part =>
  worked(
    { name: 'gamma', key: 'gamma', certainty: 'worked' },
    plus(
      { kind: 'ln', of: [humidity] },
      over(times(number(17.62), number(airC)), plus(number(243.12), number(airC))),
    ),
  )

/** SOURCE: WMO-No. 8, Annex 4.B, as `dewPoint` in core. */
function dewPart(airC: number, humidity: Part): Part {
  const gamma = gammaPart(airC, humidity)
  return worked(
    { name: 'dewC', key: 'dewC', certainty: 'worked', source: 'WMO-No. 8, Annex 4.B' },
    over(times(number(243.12), gamma), minus(number(17.62), gamma)),
  )
}
