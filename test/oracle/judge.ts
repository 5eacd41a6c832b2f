/** The verdict of an hour by rules written a second time, hour by hour and without looking ahead in columns. */
import type { Plan } from '#plan'
import { limitsOf, type SheetLimits } from './coats.ts'
import { cellsOf, type RawSample } from './raw-sample.ts'
import { type Air, marginK, rounding } from './skin.ts'
import { sunSeen } from './sun.ts'
import { readWeatherLines, type WeatherLine } from './weather-file.ts'

export type Judge = {
  readonly air: Air
  /** The warmest skin under the product, in its own colour where that is darker than the usual. */
  readonly warmestC: readonly number[]
  readonly lines: readonly WeatherLine[]
  readonly limits: SheetLimits
  /** By the hour, as the plan itself asks. */
  readonly hoursAfter: readonly number[]
  readonly openToSky: boolean
  readonly windShare: number
  readonly lamps: boolean
  readonly place: { readonly latitude: number; readonly longitude: number }
}

const windShares: Readonly<Record<string, number>> = { open: 1, cover: 0.5, shed: 0 }

/** The judge of the hours of one product at one place. */
export function judgeOf(raw: RawSample, made: Plan, hours: Plan['conditions']['zones'][number]): Judge {
  const air = made.conditions.air.find(({ key }) => key === hours.place)!
  const place = cellsOf(raw.work, 'place')
  const degrees = (cell: string): number => Number.parseFloat(place[cell]!.replace('−', '-'))
  return {
    air,
    warmestC: hours.warmestC ?? air.warmestC ?? air.surfaceC,
    lines: readWeatherLines(raw.sample),
    limits: limitsOf(raw, hours.sheet),
    hoursAfter: hours.hoursAfter,
    openToSky: air.shelter === 'open',
    windShare: windShares[air.shelter]!,
    lamps: air.shelter === 'shed' && place.lamps !== 'no',
    place: { latitude: degrees('latitude'), longitude: degrees('longitude') },
  }
}

/** Each limit that fails, with what it makes of the hour, sorted: `wind risky`. The sun on a side is left out. */
export function failsOf(judge: Judge, hour: number): readonly string[] {
  const { air, limits, lines } = judge
  const [airC, humidity, surfaceC] = [air.airC[hour]!, air.humidityShare[hour]!, air.surfaceC[hour]!]
  const warmest = judge.warmestC[hour]!
  const wind = lines[hour]!.windMps * judge.windShare
  const fails = [
    ...(airC < limits.airLeastC - rounding ? ['airLeast no'] : []),
    ...(airC > limits.airMostC + rounding ? ['airMost no'] : []),
    ...(surfaceC < limits.airLeastC - 5 - rounding
      ? ['skinLeast no']
      : surfaceC < limits.airLeastC - rounding
        ? ['skinLeast risky']
        : warmest > limits.airMostC + 5 + rounding
          ? ['skinMost no']
          : warmest > limits.airMostC + rounding
            ? ['skinMost risky']
            : []),
    ...(humidity > limits.humidityMost + rounding ? ['humidity no'] : []),
    ...(wind > 6 + rounding ? ['wind no'] : wind > 4 + rounding ? ['wind risky'] : []),
    ...dew(judge, hour),
    ...rain(judge, hour),
    ...wet(judge, hour),
    ...light(judge, hour),
  ]
  return fails.sort()
}

/** What the limits together make of it. */
export function verdictOf(fails: readonly string[]): string {
  if (fails.some((one) => one.endsWith(' no'))) return 'no'
  if (fails.some((one) => one.endsWith(' unknown'))) return 'unknown'
  return fails.length > 0 ? 'risky' : 'go'
}

const afterOf = ({ hoursAfter }: Judge, hour: number): number => hoursAfter[hour] ?? hoursAfter[0]!

function dew(judge: Judge, hour: number): readonly string[] {
  const { air, limits } = judge
  for (let later = hour; later <= hour + afterOf(judge, hour); later++) {
    const margin = marginK(air, later)
    if (margin < limits.dewMarginK - rounding) return ['dewMargin no']
    if (Number.isNaN(margin)) return ['dewMargin unknown']
  }
  return []
}

function rain(judge: Judge, hour: number): readonly string[] {
  if (!judge.openToSky) return []
  const over = judge.lines.slice(hour, hour + afterOf(judge, hour) + 1)
  return over.some(({ rainMm }) => rainMm > 0) ? ['rain no'] : []
}

/** Back to the last hour that wetted it, or that stood at 3 K over dew without rain. */
function wet({ air, limits, lines, openToSky }: Judge, hour: number): readonly string[] {
  if (marginK(air, hour) < limits.dewMarginK - rounding) return []
  for (let before = hour - 1; before >= 0; before--) {
    const margin = marginK(air, before)
    if ((openToSky && lines[before]!.rainMm > 0) || margin <= rounding) return ['wetSince no']
    if (margin >= 3 - rounding) return []
  }
  // Nobody knows what was before the weather.
  return ['wetSince risky']
}

const hourMs = 3_600_000

function light({ air, openToSky, lamps, place }: Judge, hour: number): readonly string[] {
  const startMs = air.firstMinute * 60_000 + hour * hourMs
  const sunAt = (atMs: number) => sunSeen({ ...place, atMs })
  const dark = [startMs, startMs + hourMs].some((atMs) => sunAt(atMs).altitude < -6)
  const afternoon = sunAt(startMs).solarHour > 9
  const late = afternoon && sunAt(startMs + 3 * hourMs).altitude < -0.833
  return [...(dark && !lamps ? ['dark no'] : []), ...(late && openToSky ? ['evening risky'] : [])]
}

/**
 * So near to dawn, dusk or sunset that two ways of reckoning the sun may differ, which agree to 0.05°; or so near to
 * solar midnight that mean and true sun put the hour on different days.
 */
export function nearTwilight({ air, place }: Judge, hour: number): boolean {
  const startMs = air.firstMinute * 60_000 + hour * hourMs
  const seen = (atMs: number) => sunSeen({ ...place, atMs })
  const near = (atMs: number, altitude: number): boolean => Math.abs(seen(atMs).altitude - altitude) < 0.05
  const { solarHour } = seen(startMs)
  const midnight = Math.min(solarHour, 24 - solarHour) < 0.5
  return midnight || near(startMs, -6) || near(startMs + hourMs, -6) || near(startMs + 3 * hourMs, -0.833)
}
