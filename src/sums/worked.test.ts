import { describe, expect, it } from 'vitest'
import { runSum, type SumAnswer } from './index.ts'

const value = (answer: SumAnswer, key: string) => answer.results.find((line) => line.key === key)?.value
const codes = (answer: SumAnswer) => answer.notes.map(({ code }) => code)

describe('dew', () => {
  it('stops a surface 2.26 K over the dew point', () => {
    const answer = runSum('dew', { air: '16 C', humidity: '71 %', surface: '13 C' })
    expect(value(answer, 'dewPointC')).toBeCloseTo(10.74, 2)
    expect(value(answer, 'marginK')).toBeCloseTo(2.26, 2)
    expect(value(answer, 'verdict')).toBe('no')
    expect(value(answer, 'leastSurfaceC')).toBeCloseTo(13.74, 2)
    expect(codes(answer)).toEqual(['sums.dewSurfaceClose'])
  })

  it('lets the same surface go by a limit under its margin', () => {
    const answer = runSum('dew', { air: '16 C', humidity: '71 %', surface: '13 C', limit: '4 °F' })
    expect(value(answer, 'verdict')).toBe('go')
    expect(codes(answer)).toEqual(['sums.dewHoldsThroughout'])
  })

  it('speaks up for a wet surface, humid air, frost, and a surface nobody measured', () => {
    const wet = runSum('dew', { air: '11.8 C', humidity: '87 %', surface: '9.0 C' })
    expect(codes(wet)).toEqual(['sums.dewHumid', 'sums.dewSurfaceWet'])
    const cold = runSum('dew', { air: '5 C', humidity: '50 %' })
    expect(codes(cold)).toEqual(['sums.dewFrost', 'sums.dewNoSurface'])
    expect(value(cold, 'verdict')).toBeUndefined()
  })
})

describe('spread', () => {
  it('is 9.84 m²/L for 50 % solids at 2 mil', () => {
    const answer = runSum('spread', { solids: '50 %', dryFilm: '2 mil' })
    expect(value(answer, 'theoreticalM2PerL')).toBeCloseTo(9.84, 2)
    expect(codes(answer)).toEqual(['sums.spreadNoLoss'])
  })

  it('buys for the area after the loss', () => {
    const answer = runSum('spread', { solids: '50 %', dryFilm: '50 µm', loss: '20 %', area: '16 m²' })
    expect(value(answer, 'practicalM2PerL')).toBe(8)
    expect(value(answer, 'volumeL')).toBe(2)
    expect(codes(answer)).toEqual([])
  })
})

describe('wet', () => {
  it('is 109.6 µm for 50 µm dry, 57 % solids and 25 % thinner', () => {
    const answer = runSum('wet', { dryFilm: '50 µm', solids: '57 %', thinner: '25 %' })
    expect(value(answer, 'wetFilmUm')).toBeCloseTo(109.65, 2)
    expect(codes(answer)).toEqual([])
  })

  it('says that no thinner was counted', () => {
    const answer = runSum('wet', { dryFilm: '50 µm', solids: '50 %' })
    expect(value(answer, 'wetFilmUm')).toBe(100)
    expect(codes(answer)).toEqual(['sums.wetUnthinned'])
  })
})

describe('mix', () => {
  const quart = { volume: '1 qt', ratio: '2:1', thinner: '10 %' }

  it('counts the thinner into the ready paint, and gives the other reading', () => {
    const answer = runSum('mix', { ...quart, additive: '4 fl oz/qt' })
    expect(value(answer, 'baseMl')).toBeCloseTo(573.5, 1)
    expect(value(answer, 'hardenerMl')).toBeCloseTo(286.8, 1)
    expect(value(answer, 'thinnerMl')).toBeCloseTo(86.0, 1)
    expect(value(answer, 'readyMl')).toBeCloseTo(946.353, 3)
    expect(value(answer, 'additiveMl')).toBeCloseTo(118.3, 1)
    expect(value(answer, 'otherBaseMl')).toBeCloseTo(630.9, 1)
    expect(value(answer, 'otherReadyMl')).toBeCloseTo(1041.0, 1)
    expect(codes(answer)).toEqual(['sums.mixReadyVolume', 'sums.mixByVolume', 'sums.mixAdditiveOnTop'])
  })

  it('has one reading where there is no thinner', () => {
    const answer = runSum('mix', { volume: '1 L', ratio: '4:1' })
    const turned = runSum('mix', { volume: '1 L', ratio: '1:4' })
    expect(codes(turned)).toContain('sums.mixTurned')
    expect(codes(answer)).not.toContain('sums.mixTurned')
    expect(value(answer, 'baseMl')).toBe(800)
    expect(value(answer, 'otherBaseMl')).toBeUndefined()
  })

  it('weighs the parts when each has a density, and asks for the one that is missing', () => {
    const densities = { densityA: '1.3 kg/L', densityB: '1.05 kg/L' }
    const answer = runSum('mix', { ...quart, ...densities, densityThinner: '0.87 kg/L' })
    expect(value(answer, 'baseG')).toBeCloseTo(573.547 * 1.3, 2)
    expect(value(answer, 'readyG')).toBeCloseTo(573.547 * 1.3 + 286.774 * 1.05 + 86.032 * 0.87, 2)
    const short = runSum('mix', { ...quart, ...densities })
    expect(value(short, 'baseG')).toBeUndefined()
    expect(short.notes.at(-1)).toMatchObject({
      code: 'sums.mixDensityMissing',
      data: { field: 'densityThinner' },
    })
    expect(value(runSum('mix', { volume: '1 L', ratio: '1:1', ...densities }), 'readyG')).toBe(1175)
  })
})

describe('catalyst', () => {
  it('gives grams, then millilitres at a density it states as assumed', () => {
    const answer = runSum('catalyst', { resin: '1 kg', percent: '2 %' })
    expect(value(answer, 'catalystG')).toBe(20)
    expect(value(answer, 'catalystMl')).toBeCloseTo(18.18, 2)
    expect(codes(answer)).toEqual([
      'sums.catalystDensity',
      'sums.catalystMakerLimits',
      'sums.catalystNeverForCold',
      'sums.catalystNeverWith',
    ])
  })

  it('speaks up outside 1 to 2 %, and assumes no density that was given', () => {
    const high = runSum('catalyst', { resin: '1 kg', percent: '2.5 %', density: '1.1 kg/L' })
    expect(codes(high)[0]).toBe('sums.catalystHigh')
    expect(codes(high)).not.toContain('sums.catalystDensity')
    expect(codes(runSum('catalyst', { resin: '1 kg', percent: '0.8 %' }))).toContain('sums.catalystLow')
  })
})

describe('ply', () => {
  it('is 1.0508 mm and 1.05 kg/m² of resin for 450 g/m² at 30 %', () => {
    const answer = runSum('ply', { weight: '450 g/m²', glass: '30 %' })
    expect(value(answer, 'thicknessMm')).toBeCloseTo(1.0508, 4)
    expect(value(answer, 'resinKgPerM2')).toBeCloseTo(1.05, 9)
    expect(codes(answer)).toEqual(['sums.plyDensities'])
  })

  it('doubts a glass share no hand lays', () => {
    expect(codes(runSum('ply', { weight: '450 g/m²', glass: '80 %' }))).toContain('sums.plyGlassUnusual')
  })
})

describe('bevel', () => {
  const hole = { hole: '50 mm', thickness: '6 mm', ratio: '12:1', plies: '6' }

  it('weighs glass and resin when the cloth is known', () => {
    const answer = runSum('bevel', { ...hole, weight: '450 g/m²', glass: '30 %' })
    expect(value(answer, 'outerDiameterMm')).toBe(194)
    expect(value(answer, 'glassG')).toBeCloseTo(41.6396, 4)
    expect(value(answer, 'resinG')).toBeCloseTo(97.1591, 4)
    expect(codes(answer)).toEqual(['sums.bevelPlyOrder'])
  })

  it('asks for the other half of the cloth, and warns of a steep taper', () => {
    expect(codes(runSum('bevel', { ...hole, glass: '30 %' }))).toContain('sums.bevelMassMissing')
    expect(codes(runSum('bevel', { ...hole, ratio: '8' }))).toContain('sums.bevelSteep')
  })

  it('takes a ratio of rise to run the other way round, and says so', () => {
    const [usual, turned] = ['12:1', '1:12'].map((ratio) => runSum('bevel', { ...hole, ratio }))
    expect(value(turned!, 'outerDiameterMm')).toBeCloseTo(Number(value(usual!, 'outerDiameterMm')), 9)
    expect(codes(turned!)).toContain('sums.bevelTurned')
    expect(codes(usual!)).not.toContain('sums.bevelTurned')
  })
})

describe('vent', () => {
  it('names the table of every figure and goes by the stricter one', () => {
    const answer = runSum('vent', { solvent: 'MIBK', rate: '1 L/h', mixing: '1' })
    // 64.29 m³/L at 25 %, 160.7 at 10 % (from specific gravity, molar mass and LEL of one book).
    expect(value(answer, 'airQuarterLelM3PerHour')).toBeCloseTo(64.29, 2)
    expect(value(answer, 'airTenthLelM3PerHour')).toBeCloseTo(160.7, 1)
    expect(value(answer, 'airQuarterLelCfm')).toBeCloseTo(64.29 / 1.69901, 1)
    expect(value(answer, 'limitPpm')).toBe(50)
    expect(value(answer, 'airExposureM3PerHour')).toBeCloseTo(0.1952 / 50e-6, 0)
    expect(String(value(answer, 'lelSource'))).toMatch(/NIOSH/)
    expect(codes(answer)).not.toContain('sums.ventMixing')
  })

  it('meets the regulation’s own toluene example from its own table', () => {
    const answer = runSum('vent', { solvent: 'toluene', rate: '1 gal/h' })
    const line = answer.how.find(({ data }) => String(data.table).includes('G-11'))
    expect(Number(line?.data.quarterM3PerHour) / 0.028316846592).toBeCloseTo(8564, -1)
    expect(codes(answer)).toEqual([
      'sums.ventTablesDiffer',
      'sums.ventFromMemory',
      'sums.ventMixing',
      'sums.ventFireOnly',
      'sums.ventNoFlame',
      'sums.ventNotIsocyanate',
      'sums.ventSafetySheet',
    ])
    const other = answer.how.find(({ data }) => !String(data.table).includes('G-11'))
    expect(value(answer, 'airQuarterLelM3PerHour')).toBe(other?.data.quarterM3PerHour)
  })
})

describe('sun', () => {
  it('stands where NREL’s worked example puts it and lights what faces it', () => {
    const answer = runSum('sun', {
      latitude: '39.742476 N',
      longitude: '105.1786 W',
      at: '2003-10-17T12:30:30-07:00',
      bow: 'N',
    })
    expect(value(answer, 'altitudeDeg')).toBeCloseTo(90 - 50.11162, 1)
    expect(value(answer, 'azimuthDeg')).toBeCloseTo(194.34, 1)
    expect(value(answer, 'lit')).toEqual(['port', 'transom', 'deck'])
    expect(value(answer, 'starboardIncidenceShare')).toBe(0)
  })

  it('tells sunrise and sunset by the clock of the offset', () => {
    const answer = runSum('sun', {
      latitude: '39.742476',
      longitude: '-105.1786',
      at: '2015-01-02T08:00-07:00',
      bow: '0',
    })
    expect(value(answer, 'riseTimeOfDay')).toBeCloseTo(7 + 21 / 60 + 55 / 3600, 2)
    expect(value(answer, 'setTimeOfDay')).toBeCloseTo(16 + 47 / 60 + 43 / 3600, 2)
  })

  it('knows the dark and the polar summer', () => {
    const night = { latitude: '44.5 N', longitude: '73.2 W', at: '2027-06-21T01:00-04:00', bow: '0' }
    expect(codes(runSum('sun', night))).toEqual(['sums.sunDown', 'sums.sunUpright'])
    const polar = { latitude: '70 N', longitude: '25 E', at: '2027-06-21T01:00+02:00', bow: '0' }
    expect(codes(runSum('sun', polar))).toEqual(['sums.sunPolar', 'sums.sunUpright'])
    expect(value(runSum('sun', polar), 'riseTimeOfDay')).toBeUndefined()
  })
})

describe('cure', () => {
  const table = '5C:24h,15C:10h,25C:6h'

  it('is 7.75 h at 20 °C, halfway on the log scale between 10 and 6', () => {
    const answer = runSum('cure', { table, at: '20 C' })
    expect(value(answer, 'hours')).toBeCloseTo(Math.sqrt(60), 9)
    expect(value(answer, 'found')).toBe('between')
    expect(answer.how[0]).toMatchObject({ code: 'sums.cureBetween', data: { lowC: 15, highC: 25 } })
  })

  it('errs to the safe side beyond the table, by the sense of the time', () => {
    const at = (text: string, sense: string) => runSum('cure', { table, at: text, sense })
    expect(value(at('2 C', 'least'), 'hours')).toBeUndefined()
    expect(value(at('2 C', 'least'), 'stopped')).toBe(true)
    expect(codes(at('2 C', 'least'))).toEqual(['sums.cureStopped'])
    expect(value(at('35 C', 'least'), 'hours')).toBe(6)
    expect(codes(at('35 C', 'least'))).toEqual(['sums.cureHeldAbove'])
    expect(value(at('2 C', 'most'), 'hours')).toBe(24)
    expect(codes(at('2 C', 'most'))).toEqual(['sums.cureHeldBelow'])
    expect(value(at('35 C', 'most'), 'hours')).toBe(3)
    expect(codes(at('35 C', 'most'))).toEqual(['sums.cureShortened'])
  })

  it('says that one row went by the factor of two, and refuses an unknown sense', () => {
    const answer = runSum('cure', { table: '20C:4h', at: '10 C' })
    expect(value(answer, 'hours')).toBe(8)
    expect(codes(answer)).toEqual(['sums.cureOneRow'])
    expect(() => runSum('cure', { table, at: '20 C', sense: 'about' })).toThrow(/sense/)
  })
})
