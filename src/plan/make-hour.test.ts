import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, sampleWeather, withCell } from '../../test/support/samples.ts'
import { describeMadeHour } from './describe-made-hour.ts'
import { hourMaker } from './make-hour.ts'

type Cells = readonly (readonly [path: readonly string[], text: string])[]

/** The powerboat with cells changed, and how a week of hours of one product may be asked about. */
function asked(
  cells: Cells,
  change: (weather: NonNullable<ReturnType<typeof sampleWeather>>) => object = () => ({}),
) {
  const raw = cells.reduce(
    (made, [path, text]) => withCell(made, 'work', [...path], text),
    sampleRaw('open-powerboat'),
  )
  const weather = sampleWeather('open-powerboat')!
  const input = planInput(projectRaw(raw), { ...weather, ...change(weather) })
  const made = plan(input)
  const zone = made.conditions.zones.find(({ sheet }) => sheet === 'hull-gloss')!
  const { firstMinute } = made.conditions
  const within = { fromMinute: firstMinute + 14 * 1440, toMinute: firstMinute + 21 * 1440 }
  return { made, zone, within, found: hourMaker(input, made)({ key: zone.key, ...within }) }
}

const flat = (hours: number, value: number) => new Float64Array(hours).fill(value)
const cold = ({ hours }: { readonly hours: number }) => ({
  airC: flat(hours, 6),
  humidityShare: flat(hours, 0.5),
  rainMm: flat(hours, 0),
  windMps: flat(hours, 1),
})

describe('a week of 6 °C under a cover', () => {
  const { zone, within, found } = asked([[['sheets', 'hull-gloss', 'airLeast'], '10 °C']], cold)

  it('has no hour, and a cover that is there is not what would make one', () => {
    const hour = (within.fromMinute - zone.firstMinute) / 60
    expect(zone.verdicts.slice(hour, hour + 7 * 24)).not.toContain('go')
    expect(found!.under).toEqual([])
  })

  it('would do four kelvin warmer, in a tent a metre clear of her', () => {
    expect(found!.heat!.riseK).toBeCloseTo(4, 9)
    const { lengthM, widthM, heightM, powerKw } = found!.heat!.tent!
    // By hand: roof and walls at 6 W/(m² K), air of 1206 J/(m³ K) twice an hour.
    const skin = lengthM * widthM + 2 * heightM * (lengthM + widthM)
    expect(powerKw).toBeCloseTo((4 * (6 * skin + (2 * 1206 * lengthM * widthM * heightM) / 3600)) / 1000, 9)
  })

  it('would do for a product that goes on at 6 °C', () => {
    expect(found!.grade).toMatchObject({ kind: 'colder', neededC: 10, hadC: 6 })
  })

  it('is said with the caution of every heater', () => {
    const codes = describeMadeHour(found!, 'UTC').map(({ code }) => code)
    expect(codes).toEqual(['make.grade', 'make.heat'])
    const [grade, heat] = describeMadeHour(found!, 'UTC').map(({ data }) => data)
    // A sheet that takes in the hour, in whole degrees, and a heater that is no smaller than what is needed.
    expect(grade!.hadC).toBe(Math.floor(found!.grade!.hadC))
    expect(heat!.powerKw).toBeGreaterThanOrEqual(found!.heat!.tent!.powerKw)
    expect(heat!.powerKw).toBeLessThan(found!.heat!.tent!.powerKw + 0.1)
  })
})

describe('a week of rain in the open', () => {
  const { found } = asked([[['place', 'shelter'], 'open']], (weather) => ({
    airC: flat(weather.hours, 18),
    humidityShare: flat(weather.hours, 0.5),
    rainMm: flat(weather.hours, 1),
    windMps: flat(weather.hours, 1),
  }))

  it('wants a cover and no heat', () => {
    expect(found!.under.map(({ shelter }) => shelter)).toEqual(['cover', 'shed'])
    expect(found!.heat).toBeUndefined()
    expect(found!.grade).toBeUndefined()
  })
})

describe('a dry hour at noon among damp ones', () => {
  const { found } = asked([[['sheets', 'hull-gloss', 'airLeast'], '10 °C']], (weather) => ({
    ...cold(weather),
    airC: flat(weather.hours, 15),
    humidityShare: flat(weather.hours, 0.95).map((share, hour) => (hour % 24 === 12 ? 0.5 : share)),
  }))

  it('is warmed for as long as the film minds dew, not for its own hour alone', () => {
    // 15 °C at 95 % has its dew point at 14.21 °C (psychrolib 1.1.1), and 3 K over it is wanted.
    expect(found!.heat!.riseK).toBeCloseTo(14.21 + 3 - 15, 1)
  })
})

describe('a heat wave', () => {
  const { found } = asked([[['sheets', 'hull-gloss', 'airMost'], '30 °C']], (weather) => ({
    ...cold(weather),
    airC: flat(weather.hours, 33),
  }))

  it('wants a slower grade, and no heater', () => {
    expect(found!.grade).toMatchObject({ kind: 'warmer', neededC: 30, hadC: 33 })
    expect(found!.heat).toBeUndefined()
  })
})

it('nothing helps where nothing is known, and that is said', () => {
  const { found } = asked([], (weather) => ({ airC: flat(weather.hours, Number.NaN) }))
  expect(found).toEqual({ under: [] })
  expect(describeMadeHour(found!, 'UTC').map(({ code }) => code)).toEqual(['make.nothing'])
})

it('hours that are not judged are none to be made', () => {
  const { made, within } = asked([])
  const input = planInput(projectRaw(sampleRaw('open-powerboat')), sampleWeather('open-powerboat'))
  expect(hourMaker(input, made)({ key: 'nowhere|nothing', ...within })).toBeUndefined()
})
