/**
 * The weather of a plan, on its dates: what was given, and behind its horizon a typical year. Where only a typical year
 * is given the horizon stands before its first hour.
 */
import {
  completeForecast,
  distanceM,
  fadedAfterHours,
  type HourlySeries,
  hourMs,
  isTypicalYear,
  overDates,
} from '#core/climate'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Runner, Stage } from '../remember.ts'
import type { Horizon } from '../types.ts'

/** How far a job is looked ahead, h: more than a year. */
const HOURS_AHEAD = 400 * 24

/** A station nearer than this stands for the place, m. Common practice, assumed. */
const NEAR_M = 50_000

const MILE_M = 1609.344

export type WeatherGiven = {
  /** A forecast or what was measured, or a typical year alone. */
  readonly weather: HourlySeries | undefined
  /** The typical year for what comes after. */
  readonly typical: HourlySeries | undefined
}

export type DatedWeather = {
  readonly series?: HourlySeries
  /** Absent where no hour is of a typical year. */
  readonly horizon?: Horizon
  /** The typical year behind the horizon, as it was given. */
  readonly year?: HourlySeries
  /** Every hour is of it. */
  readonly alone?: true
  readonly notes: readonly Note[]
}

type DatedInput = WeatherGiven & {
  readonly latitude: Work['place']['latitude'] | undefined
  readonly longitude: Work['place']['longitude'] | undefined
  readonly fromDate: string
}

/** From the day before the first on which the plan may work. */
export function datedWeather(
  run: Runner,
  { place, ...given }: WeatherGiven & { readonly place: Work['place']; readonly fromDate: string },
): DatedWeather {
  const { weather, typical } = given
  if (typical === undefined && (weather === undefined || !isTypicalYear(weather)))
    return weather === undefined ? { notes: nothing } : { series: weather, notes: nothing }
  const { latitude, longitude } = place
  return run(dated, { ...given, latitude, longitude })
}

/** One list, so that the notes of a plan are not gathered anew. */
const nothing: readonly Note[] = []

const dated: Stage<DatedInput, DatedWeather> = { name: 'dated weather', run: onDates, fresh: true }

function onDates(input: DatedInput): DatedWeather {
  const { weather, typical, fromDate } = input
  const fromMs = Date.parse(`${fromDate}T00:00Z`) - 24 * hourMs
  if (weather !== undefined && isTypicalYear(weather)) {
    const twice = typical === undefined ? [] : [noteOf('conditions.typicalTwice', 'warning')]
    return { ...alone(weather, fromMs), notes: [...twice, ...elsewhere(input, weather)] }
  }
  if (typical === undefined || !isTypicalYear(typical))
    return {
      ...(weather ? { series: weather } : {}),
      notes: typical ? [noteOf('conditions.typicalDated', 'warning', { source: typical.source })] : nothing,
    }
  const far = elsewhere(input, typical)
  if (weather === undefined) return { ...alone(typical, fromMs), notes: far }
  const { notes, ...behind } = afterForecast({ forecast: weather, typical, fromMs })
  return { ...behind, notes: [...notes, ...(behind.horizon ? far : [])] }
}

function alone(year: HourlySeries, fromMs: number): Omit<DatedWeather, 'notes'> {
  const series = overDates(year, { fromMs, hours: HOURS_AHEAD })
  const firstMinute = series.startMs / 60_000
  return {
    series,
    year,
    alone: true,
    horizon: { forecastUntilMinute: firstMinute, typicalFromMinute: firstMinute },
  }
}

function afterForecast(of: {
  readonly forecast: HourlySeries
  readonly typical: HourlySeries
  readonly fromMs: number
}): DatedWeather {
  const { forecast, typical, fromMs } = of
  const { series, horizonHour, plainHour } = completeForecast({
    forecast,
    typical,
    untilMs: fromMs + HOURS_AHEAD * hourMs,
  })
  if (horizonHour >= series.hours) return { series, notes: [] }
  const at = (hour: number) => series.startMs + hour * hourMs
  const endMs = at(horizonHour)
  // `fromMs` is a day before the work may begin.
  const past = endMs <= fromMs + 24 * hourMs
  const data = { endAtMs: endMs, source: typical.source }
  if (past && at(plainHour) <= fromMs)
    return { ...alone(typical, fromMs), notes: [noteOf('conditions.forecastPast', 'warning', data)] }
  return {
    series,
    year: typical,
    horizon: { forecastUntilMinute: endMs / 60_000, typicalFromMinute: at(plainHour) / 60_000 },
    notes: [
      past
        ? noteOf('conditions.forecastPast', 'warning', data)
        : noteOf('conditions.beyondForecast', 'assumed', { ...data, fadeDays: fadedAfterHours / 24 }),
    ],
  }
}

const noteOf = (code: string, severity: Note['severity'], data: Note['data'] = {}): Note => ({
  code,
  severity,
  data,
})

/** A season of another place is told by how far that is; of a place or station nobody knows nothing is said. */
function elsewhere({ latitude, longitude }: DatedInput, { spot, source }: HourlySeries): readonly Note[] {
  if (!spot || !latitude || !longitude) return []
  const offM = distanceM(spot, { latitude: latitude.value, longitude: longitude.value })
  if (offM <= NEAR_M) return []
  return [
    noteOf('conditions.typicalElsewhere', 'caution', {
      source,
      distanceKm: Math.round(offM / 1000),
      distanceMiles: Math.round(offM / MILE_M),
    }),
  ]
}
