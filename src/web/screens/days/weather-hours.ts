/** The weather over the days shown, hour by hour: what the drawing shows and its table says. */
import type { ShownPlan } from '../../worker/messages.ts'
import { type AirThen, airThen } from '../air-now.ts'
import type { Minutes } from '../hour-spans.ts'

export type Rain =
  | { readonly kind: 'fell'; readonly mm: number }
  /** None is forecast, or nobody says how much; so likely is some. */
  | { readonly kind: 'chance'; readonly share: number }
  | { readonly kind: 'dry' }
  | { readonly kind: 'unknown' }

export type Wind = {
  readonly mps: number
  /** Undefined where the weather does not say. */
  readonly fromRad: number | undefined
}

export type WeatherHour = {
  readonly minute: number
  readonly air: AirThen | undefined
  readonly rain: Rain
  readonly wind: Wind | undefined
}

/** Every full hour that begins within, also those the weather does not reach: these are not known. */
export function weatherHours(plan: ShownPlan, { fromMinute, toMinute }: Minutes): readonly WeatherHour[] {
  const first = Math.ceil(fromMinute / 60)
  const last = Math.ceil(toMinute / 60)
  return Array.from({ length: Math.max(0, last - first) }, (_, k) => {
    const minute = (first + k) * 60
    return {
      minute,
      air: airThen(plan, 'boat', minute),
      rain: rainAt(plan, minute),
      wind: windAt(plan, minute),
    }
  })
}

function rainAt({ conditions: { sky } }: ShownPlan, minute: number): Rain {
  const at = hourOf(sky, minute)
  const mm = at === undefined ? undefined : known(sky?.rainMm[at])
  const share = at === undefined ? undefined : known(sky?.rainChanceShare[at])
  if (mm !== undefined && mm > 0) return { kind: 'fell', mm }
  if (share !== undefined && share > 0) return { kind: 'chance', share }
  return mm === undefined && share === undefined ? { kind: 'unknown' } : { kind: 'dry' }
}

function windAt({ conditions: { sky } }: ShownPlan, minute: number): Wind | undefined {
  const at = hourOf(sky, minute)
  const mps = at === undefined ? undefined : known(sky?.windMps[at])
  return mps === undefined || at === undefined ? undefined : { mps, fromRad: known(sky?.windFromRad[at]) }
}

const hourOf = (sky: ShownPlan['conditions']['sky'], minute: number): number | undefined =>
  sky && minute >= sky.firstMinute ? Math.floor((minute - sky.firstMinute) / 60) : undefined

const known = (value: number | undefined): number | undefined =>
  value === undefined || Number.isNaN(value) ? undefined : value
