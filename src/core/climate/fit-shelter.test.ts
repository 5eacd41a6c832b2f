import { describe, expect, it } from 'vitest'
import { fitShelter, leastFitHours, type ShelterReadings } from './fit-shelter.ts'
import { inventWeather } from './invent.ts'
import { chanceFrom } from './invented-chance.ts'
import type { HourlySeries } from './series.ts'
import { hourMs } from './series.ts'
import { flameWater } from './shed/flame.ts'
import type { Shed } from './shed/shed-air.ts'
import { assumedAir, insideOf } from './shelter.ts'
import type { ShelterAir } from './shelter-air.ts'
import { skyLight } from './sun/sky-light.ts'

const degree = Math.PI / 180
const place = { latitude: 59.4 * degree, longitude: 17 * degree }
const series = inventWeather({
  ...place,
  kind: 'lake spring',
  startMs: Date.parse('2027-04-01T00:00+02:00'),
  days: 40,
  seed: 5,
})
const sunWm2 = skyLight({ series, place }).globalWm2
const assumed = assumedAir('shed')
const shed: ShelterAir = { airLagHours: 5, sunKPerWm2: 0.008, waterKgM3: 0.0012 }

type Span = {
  readonly fromHour: number
  readonly hours: number
  readonly seed?: number
  readonly shiftMs?: number
  readonly shed?: Shed
}

/** What a logger reads in a shed of known figures: to 0.1 K and 1 %, with noise of 0.3 K and 1.5 % (one sigma). */
function logged(
  air: ShelterAir,
  { fromHour, hours, seed = 3, shiftMs = 0, shed: within }: Span,
): HourlySeries {
  const inside = insideOf({ series, sunWm2, air, shed: within })
  const { share } = chanceFrom(seed)
  // Sum of twelve draws less six: mean 0, spread 1.
  const normal = () => Array.from({ length: 12 }, share).reduce((sum, one) => sum + one, -6)
  const rows = Array.from({ length: hours }, (_, hour) => fromHour + hour)
  return {
    kind: 'hourlySeries',
    startMs: series.startMs + fromHour * hourMs + shiftMs,
    hours,
    airC: rows.map((hour) => Math.round(10 * (inside.airC[hour]! + 0.3 * normal())) / 10),
    humidityShare: rows.map((hour) =>
      Math.min(1, Math.max(0, Math.round(100 * (inside.humidityShare[hour]! + 0.015 * normal())) / 100)),
    ),
    gaps: [],
    source: 'made for a test',
    licence: '',
  }
}

const fit = (logger: HourlySeries, more: Partial<ShelterReadings> = {}) =>
  fitShelter({ series, sunWm2, logger, assumed, ...more })

function fitted(logger: HourlySeries, more: Partial<ShelterReadings> = {}) {
  const found = fit(logger, more)
  if (found.kind !== 'fitted') throw new Error(`fit: not fitted, got ${found.kind}, expected fitted`)
  return found
}

describe('a shelter fitted from a logger', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'comes back from three days with noise of 0.3 K and 1.5 %, seed %i',
    (seed) => {
      const {
        air,
        hours,
        rmsK,
        rmsShare,
        assumed: before,
      } = fitted(logged(shed, { fromHour: 300, hours: 72, seed }))
      expect(hours).toBe(72)
      expect(Math.abs(air.airLagHours - 5)).toBeLessThan(0.6)
      expect(Math.abs(air.sunKPerWm2 - 0.008)).toBeLessThan(0.001)
      expect(Math.abs(air.waterKgM3 - 0.0012)).toBeLessThan(0.0002)
      // What is left is the noise put in, and half of the least step.
      expect(rmsK).toBeGreaterThan(0.2)
      expect(rmsK).toBeLessThan(0.4)
      expect(rmsShare).toBeLessThan(0.03)
      expect(before.rmsK).toBeGreaterThan(rmsK)
    },
  )

  it('finds again what is assumed where that is the truth', () => {
    const { air } = fitted(logged(assumed, { fromHour: 300, hours: 96 }))
    expect(Math.abs(air.airLagHours - 3)).toBeLessThan(0.6)
    expect(air.sunKPerWm2).toBeLessThan(0.001)
    expect(Math.abs(air.waterKgM3)).toBeLessThan(0.0002)
  })

  it('is as good over a month as over days, and reads a logger whose hours begin at other minutes', () => {
    const month = fitted(logged(shed, { fromHour: 100, hours: 700 }))
    expect(Math.abs(month.air.airLagHours - 5)).toBeLessThan(0.2)
    const aside = fitted(logged(shed, { fromHour: 300, hours: 96, shiftMs: 20 * 60_000 }))
    // The logger is 20 minutes late in all.
    expect(aside.air.airLagHours).toBeGreaterThan(4.6)
    expect(aside.air.airLagHours).toBeLessThan(6.4)
  })

  it('keeps the sun at nothing where nobody knows the sun', () => {
    const { air } = fitted(logged({ ...shed, sunKPerWm2: 0 }, { fromHour: 300, hours: 72 }), {
      sunWm2: undefined,
    })
    expect(air.sunKPerWm2).toBe(0)
    expect(Math.abs(air.airLagHours - 5)).toBeLessThan(0.7)
  })

  it('leaves holes of the logger and of the weather out, and counts the hours that are left', () => {
    const whole = logged(shed, { fromHour: 300, hours: 96 })
    const airC = Array.from(whole.airC, (value, hour) => (hour % 5 === 0 ? Number.NaN : value))
    expect(fitted({ ...whole, airC }).hours).toBe(96 - 20)
  })
})

describe('a shed with a heater fitted from a logger', () => {
  const over = (of: (hourOfDay: number) => number) =>
    Float64Array.from({ length: series.hours }, (_, hour) => of(hour % 24))
  const heated: Shed = {
    room: { lengthM: 12, widthM: 7, heightM: 5, lossWm2K: 5.88, airChanges: 1 },
    airChanges: over((hour) => (hour === 8 || hour === 13 ? 6 : 1)),
    floorKg: over((hour) => (hour === 9 ? 0.5 : 0)),
    heater: {
      holdsC: over((hour) => (hour >= 7 && hour < 16 ? 14 : 6)),
      mostW: Number.POSITIVE_INFINITY,
      waterKgJ: flameWater('kerosene'),
    },
  }

  it.each([1, 2, 3, 4])(
    'comes back from six days, with its heater, doors and floor as told, seed %i',
    (seed) => {
      const logger = logged(shed, { fromHour: 300, hours: 144, seed, shed: heated })
      const { air, rmsK } = fitted(logger, { shed: heated })
      expect(Math.abs(air.airLagHours - 5)).toBeLessThan(0.6)
      expect(Math.abs(air.sunKPerWm2 - 0.008)).toBeLessThan(0.0012)
      expect(Math.abs(air.waterKgM3 - 0.0012)).toBeLessThan(0.0003)
      expect(rmsK).toBeLessThan(0.4)
      // Without what was told of it, the heater would look like a lag of days.
      expect(fit(logger).kind).not.toBe('fitted')
    },
  )
})

describe('a logger that cannot be fitted to', () => {
  it('has too few hours in common with the weather, or none', () => {
    expect(fit(logged(shed, { fromHour: 300, hours: leastFitHours - 1 }))).toEqual({ kind: 'few', hours: 23 })
    const before = { ...logged(shed, { fromHour: 300, hours: 72 }), startMs: series.startMs - 1000 * hourMs }
    expect(fit(before)).toEqual({ kind: 'few', hours: 0 })
    const after = { ...before, startMs: series.startMs + 5000 * hourMs }
    expect(fit(after)).toEqual({ kind: 'few', hours: 0 })
    // The first half day of the weather is not fitted to.
    expect(fit(logged(shed, { fromHour: 0, hours: 30 }))).toEqual({ kind: 'few', hours: 18 })
  })

  it('is of unknown hours only', () => {
    const whole = logged(shed, { fromHour: 300, hours: 72 })
    const unknown = new Float64Array(72).fill(Number.NaN)
    expect(fit({ ...whole, humidityShare: unknown }).kind).toBe('few')
  })

  it('lay in a drawer indoors, hung in the sun, or reads at random', () => {
    const whole = logged(shed, { fromHour: 300, hours: 96 })
    const drawer = {
      ...whole,
      airC: new Float64Array(96).fill(22),
      humidityShare: new Float64Array(96).fill(0.4),
    }
    expect(fit(drawer).kind).toBe('poor')
    const sunny = {
      ...whole,
      airC: Array.from(whole.airC, (value, hour) => value + (hour % 24 === 9 ? 25 : 0)),
    }
    expect(fit(sunny).kind).toBe('poor')
    const { between, share } = chanceFrom(9)
    const random = {
      ...whole,
      airC: Array.from({ length: 96 }, () => between(-30, 60)),
      humidityShare: Array.from({ length: 96 }, share),
    }
    expect(fit(random).kind).toBe('poor')
  })

  it('changes its ways, so that what was learnt first is worse than what is assumed', () => {
    const first = logged({ airLagHours: 20, sunKPerWm2: 0, waterKgM3: 0.0025 }, { fromHour: 300, hours: 64 })
    const then = logged(assumed, { fromHour: 364, hours: 32 })
    const airC = [...first.airC, ...then.airC]
    const humidityShare = [...first.humidityShare, ...then.humidityShare]
    const found = fit({ ...first, hours: 96, airC, humidityShare })
    expect(found.kind).toBe('worse')
    if (found.kind === 'worse') expect(found.rmsK).toBeGreaterThan(found.assumed.rmsK)
  })
})
