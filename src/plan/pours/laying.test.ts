import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import type { ChainedPour } from '#core/coating'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, sampleWeather, withCell } from '../../../test/support/samples.ts'
import { readCatalogue } from '../read-catalogue.ts'
import type { Coat } from './coat.ts'
import { describeLaying } from './describe-laying.ts'
import { layingOf } from './laying.ts'
import { sunnySide } from './sunny-side.ts'

const raw = sampleRaw('open-powerboat')
const weather = sampleWeather('open-powerboat')
const { work } = projectRaw(raw)
const made = plan(planInput(projectRaw(raw), weather))
const glossOn = (of: typeof made, zone: string) =>
  of.pours.pours.filter((pour) => pour.zone === zone && pour.step.includes('gloss'))

describe('the side in the sun', () => {
  // Over 45° N the sun stands in the east in the morning, in the south at noon, in the west in the evening.
  const figure = (value: number) => ({ value, text: '', certainty: 'measured' as const })
  const heading = (degrees: number, shelter: 'open' | 'shed' = 'open') => ({
    ...work.place,
    shelter,
    latitude: figure(Math.PI / 4),
    longitude: figure(0),
    bowBearing: figure((degrees * Math.PI) / 180),
  })
  const at = (clock: string) => Date.parse(`2027-06-21T${clock}:00Z`) / 60_000

  it.each([
    ['06:00', 0, 'starboard'],
    ['18:00', 0, 'port'],
    ['12:00', 90, 'starboard'],
    ['12:00', 270, 'port'],
    ['00:00', 90, 'neither'],
  ] as const)('at %s with the bow at %s° is %s', (clock, degrees, side) => {
    expect(sunnySide(heading(degrees), at(clock))).toBe(side)
  })

  it('is none in a shed, and unknown while nobody says where the bow points', () => {
    expect(sunnySide(heading(0, 'shed'), at('12:00'))).toBe('neither')
    const { bowBearing: _, ...nowhere } = heading(0)
    expect(sunnySide(nowhere, at('12:00'))).toBe('unknown')
  })
})

describe('sections along a side', () => {
  it('go on over every run of a pour', () => {
    const known = readCatalogue.run({ catalogue })
    const runs = [
      { where: 'port', area: 6, lengthM: 6 },
      { where: 'starboard', area: 3, lengthM: 3 },
    ]
    const coat = {
      runs,
      pace: 0.1,
      crew: 2,
      shows: true,
      sunny: 'neither',
      floorAt: () => 'dry',
      wetEdgeAt: () => 5,
    }
    const pour = { from: 0, stretches: runs.map(({ area }, run) => ({ run, area })) }
    const { sections } = layingOf(coat as unknown as Coat, pour as unknown as ChainedPour, known)
    // Two roll half a metre before they tip: 9 m in 18, of half a square metre and so five minutes each.
    expect(sections).toEqual({ count: 18, widthM: 0.5, minutes: 5 })
  })

  it('are about as wide as a crew rolls, and take their share of the coat', () => {
    const pours = glossOn(made, 'topsides-port').filter(({ laying }) => laying.sections)
    expect(pours.length).toBeGreaterThan(0)
    for (const { laying } of pours) {
      const { count, widthM, minutes } = laying.sections!
      // 500 mm by two, 300 mm by one, rounded to whole sections; 7 and 4 m² an hour.
      expect(widthM).toBeGreaterThan(laying.crew > 1 ? 0.4 : 0.24)
      expect(widthM).toBeLessThan(laying.crew > 1 ? 0.65 : 0.4)
      expect(Number.isInteger(count)).toBe(true)
      expect(minutes).toBeGreaterThan(0)
    }
    for (const coat of new Set(pours.map(({ step }) => step))) {
      const own = pours.filter(({ step }) => step === coat)
      const area = own.reduce((sum, { areaM2 }) => sum + areaM2, 0)
      const worked = own.reduce(
        (sum, { laying }) => sum + laying.sections!.count * laying.sections!.minutes,
        0,
      )
      const pace = own[0]!.laying.crew > 1 ? 7 : 4
      // Work is counted in whole minutes.
      expect(Math.abs(worked - (area / pace) * 60)).toBeLessThan(1)
    }
  })

  it('of both sides in one zone begin where the sun is not', () => {
    const place = { latitude: '45°', longitude: '0°', bowBearing: '0°', shelter: 'open', timeZone: 'UTC' }
    const both = Object.entries(place).reduce(
      (document, [key, text]) => withCell(document, 'work', ['place', key], text),
      withCell(raw, 'work', ['zones', 'topsides-port', 'side'], 'both'),
    )
    const shown = plan(planInput(projectRaw(both), weather))
    const firsts = glossOn(shown, 'topsides-port').filter(({ nr, runs }) => nr === 1 && runs.length > 0)
    expect(firsts.length).toBeGreaterThan(0)
    for (const { laying, runs } of firsts)
      if (laying.sunny === 'port' || laying.sunny === 'starboard')
        expect(runs[0]!.where).not.toBe(laying.sunny)
    expect(firsts.some(({ laying }) => laying.sunny !== 'unknown')).toBe(true)
  })
})

describe('the words of laying off', () => {
  const codes = (pour: (typeof made.pours.pours)[number]) =>
    describeLaying(made, pour).map(({ code }) => code)

  it('say way, hands, sections and look for a tipped side, once the way, and only the look for filler', () => {
    const [first] = glossOn(made, 'topsides-port')
    expect(codes(first!)).toEqual([
      'lay.way',
      'lay.tools',
      'lay.floor',
      'lay.hands',
      'lay.sections',
      'lay.looks',
    ])
    const filler = made.pours.pours.find(({ zone, step }) =>
      made.buildUps.layers.some(
        (one) => one.role === 'fairing' && one.zone === zone && step.includes(one.layer),
      ),
    )
    expect(codes(filler!)).toEqual(['lay.looks'])
  })

  it('are none for a pour whose step is gone', () => {
    expect(describeLaying(made, { ...made.pours.pours[0]!, step: 'gone' })).toEqual([])
  })

  it('let a first coat look poor, and the last not', () => {
    const look = (nr: number) =>
      glossOn(made, 'topsides-port')
        .filter(({ step }) => step.endsWith(`:${nr}`))
        .flatMap((pour) => describeLaying(made, pour))
        .find(({ code }) => code === 'lay.looks')?.data.looks
    expect([look(1), look(3)]).toEqual(['poorAtFirst', 'lastGloss'])
  })
})
