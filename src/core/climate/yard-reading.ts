/** Air, humidity and skin that somebody read at the boat, and how they shift the hours after. */
import { dewPoint, relativeHumidity } from './dew-point.ts'
import { dewPoints } from './dew-points.ts'
import type { HourlyColumn, HourlySeries } from './series.ts'
import { hourMs, valueAt } from './series.ts'

export type YardReading = {
  /** ms since 1970 UTC. */
  readonly atMs: number
  readonly airC?: number
  /** 0..1. */
  readonly humidityShare?: number
  readonly skinC?: number
  /** The skin was read on the very surface that is judged, not elsewhere on the boat or nobody knows where. */
  readonly here: boolean
}

export type ReadFault = {
  readonly atMs: number
  readonly what: 'air' | 'humidity' | 'skin'
  readonly read: number
  readonly expected: number
  /** What it looks like: degrees Fahrenheit called Celsius, or a share called per cent. */
  readonly looks: 'fahrenheit' | 'share' | 'other'
}

/** Read less forecast, K, at the moment it was read; what was not read is left out. */
export type ReadShift = {
  readonly atMs: number
  readonly airK?: number
  readonly dewK?: number
  readonly skinK?: number
  readonly here: boolean
}

/**
 * How long a reading holds against the forecast: in full in its hour, then less from hour to hour and nothing any more
 * after so many, h. Assumed: it is the error of a forecast over half a day.
 */
export const readingFadesHours = 12

/** A reading further from the forecast than this is a slip and no weather, K. Assumed. */
const mostAirOffK = 15
const mostSkinOffK = 30
/** No air outdoors where people paint is so dry. Assumed. */
const leastHumidity = 0.05

export type Readings = { readonly shifts: readonly ReadShift[]; readonly faults: readonly ReadFault[] }

/**
 * What readings say against the forecast at their moment, in order of time.
 * @param at.series air at the boat, under its shelter. @param at.surfaceC its skin, °C.
 * @returns `shifts` of those that can be, `faults` of those that cannot: a wrong air or humidity takes the other with it,
 * a wrong skin only itself. A reading outside the series, or where the forecast has a hole, says nothing.
 */
export function readingShifts(at: {
  readonly series: HourlySeries
  readonly surfaceC: HourlyColumn
  readonly readings: readonly YardReading[]
}): Readings {
  const dewC = dewPoints(at.series)
  const found = at.readings.map((reading) => shiftOf(at, { reading, dewC }))
  return {
    shifts: found.flatMap(({ shift }) => (shift ? [shift] : [])).sort((a, b) => a.atMs - b.atMs),
    faults: found.flatMap(({ faults }) => faults),
  }
}

type Found = { readonly shift?: ReadShift; readonly faults: readonly ReadFault[] }

function shiftOf(
  { series, surfaceC }: { readonly series: HourlySeries; readonly surfaceC: HourlyColumn },
  { reading, dewC }: { readonly reading: YardReading; readonly dewC: HourlyColumn },
): Found {
  const { atMs } = reading
  const forecast = {
    airC: between(series, series.airC, atMs),
    dewC: between(series, dewC, atMs),
    skinC: between(series, surfaceC, atMs),
  }
  if (Number.isNaN(forecast.airC + forecast.dewC + forecast.skinC)) return { faults: [] }
  const faults = faultsOf(reading, forecast)
  const wrong = new Set(faults.map(({ what }) => what))
  const airless = wrong.has('air') || wrong.has('humidity')
  const shift: ReadShift = {
    atMs,
    here: reading.here,
    ...(airless ? {} : airShift(reading, forecast)),
    ...(reading.skinC === undefined || wrong.has('skin') ? {} : { skinK: reading.skinC - forecast.skinC }),
  }
  return Object.keys(shift).length === 2 ? { faults } : { shift, faults }
}

type Forecast = { readonly airC: number; readonly dewC: number; readonly skinC: number }

/** Air alone leaves the water in it as forecast; humidity alone is taken at the air forecast. */
function airShift(
  { airC, humidityShare }: YardReading,
  forecast: Forecast,
): Pick<ReadShift, 'airK' | 'dewK'> {
  return {
    ...(airC === undefined ? {} : { airK: airC - forecast.airC }),
    ...(humidityShare === undefined
      ? {}
      : { dewK: dewPoint({ airC: airC ?? forecast.airC, humidityShare }) - forecast.dewC }),
  }
}

function faultsOf(
  { atMs, airC, humidityShare, skinC }: YardReading,
  forecast: Forecast,
): readonly ReadFault[] {
  const far = (what: 'air' | 'skin', read: number | undefined, expected: number, mostK: number) =>
    read === undefined || Math.abs(read - expected) <= mostK
      ? []
      : [{ atMs, what, read, expected, looks: looksFahrenheit(read, expected) } as const]
  const expectedHumidity = Math.min(1, relativeHumidity({ airC: airC ?? forecast.airC, dewC: forecast.dewC }))
  return [
    ...far('air', airC, forecast.airC, mostAirOffK),
    ...(humidityShare !== undefined && !(humidityShare >= leastHumidity && humidityShare <= 1)
      ? [{ atMs, what: 'humidity', read: humidityShare, expected: expectedHumidity, looks: 'share' } as const]
      : []),
    ...far('skin', skinC, forecast.skinC, mostSkinOffK),
  ]
}

const looksFahrenheit = (read: number, expected: number): ReadFault['looks'] =>
  Math.abs((read - 32) / 1.8 - expected) < 10 ? 'fahrenheit' : 'other'

/** A column that is told at the start of each hour, on the straight line between two of them. */
function between({ startMs }: HourlySeries, column: HourlyColumn, atMs: number): number {
  const at = (atMs - startMs) / hourMs
  const hour = Math.floor(at)
  const [here, next] = [valueAt(column, hour), valueAt(column, hour + 1)]
  return at === hour || Number.isNaN(next) ? here : here + (next - here) * (at - hour)
}

/** A shift over the hours of a series, K, and the reading that each hour has it from. */
type Column = { readonly shiftK: Float64Array; readonly from: readonly (ReadShift | undefined)[] }

/**
 * A shift over the hours of a series: of the last reading of its kind, in full in its hour and gone after
 * `readingFadesHours`; 0 in every other hour.
 */
function shiftColumn(
  { startMs, hours }: Pick<HourlySeries, 'startMs' | 'hours'>,
  shifts: readonly ReadShift[],
  kind: 'airK' | 'dewK' | 'skinK',
): Column {
  const shiftK = new Float64Array(hours)
  const from = new Array<ReadShift | undefined>(hours).fill(undefined)
  for (const shift of shifts) {
    const { atMs, [kind]: by } = shift
    if (by === undefined) continue
    const first = Math.max(0, Math.floor((atMs - startMs) / hourMs))
    for (let hour = first; hour < hours; hour++) {
      const age = Math.max(0, (startMs + hour * hourMs - atMs) / hourMs)
      // What an earlier reading said of these hours holds no more, also where this one has faded away.
      if (age >= 2 * readingFadesHours) break
      shiftK[hour] = by * Math.max(0, 1 - age / readingFadesHours)
      from[hour] = age < readingFadesHours ? shift : undefined
    }
  }
  return { shiftK, from }
}

/**
 * The air of a series with shifts on it: temperature and dew point move, humidity follows, at most 1. Hours without a
 * shift keep their very figures.
 */
export function withAirShifts(series: HourlySeries, shifts: readonly ReadShift[]): HourlySeries {
  const air = shiftColumn(series, shifts, 'airK').shiftK
  const dew = shiftColumn(series, shifts, 'dewK').shiftK
  const dewC = dewPoints(series)
  const moved = (hour: number): boolean => air[hour] !== 0 || dew[hour] !== 0
  const airC = Float64Array.from(series.airC, (value, hour) => value + air[hour]!)
  const humidityShare = Float64Array.from(series.humidityShare, (value, hour) =>
    moved(hour)
      ? Math.min(1, relativeHumidity({ airC: airC[hour]!, dewC: dewC[hour]! + dew[hour]! }))
      : value,
  )
  return { ...series, airC, humidityShare }
}

/**
 * The skin with shifts on it, °C: by its own reading where there is one, else as the air, which it follows. A skin that
 * was not read on this very surface counts only as far as it is colder: a side in the sun must not warm one in the shade.
 */
export function withSkinShifts(
  surfaceC: HourlyColumn,
  { series, shifts }: { readonly series: HourlySeries; readonly shifts: readonly ReadShift[] },
): Float64Array {
  const air = shiftColumn(series, shifts, 'airK').shiftK
  const skin = shiftColumn(series, shifts, 'skinK')
  return Float64Array.from(surfaceC, (value, hour) => {
    const byAir = air[hour]!
    const from = skin.from[hour]
    if (from === undefined) return value + byAir
    const own = skin.shiftK[hour]!
    return value + (from.here ? own : Math.min(own, byAir))
  })
}
