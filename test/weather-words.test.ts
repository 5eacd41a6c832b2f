// What is wrong with weather files, and which limits fail, is said in whole sentences with the figures in them.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { FailingLimit, Limit } from '#core/climate'
import { limitNote, limitUnits, shelterNote } from '#core/climate'
import { readWeather } from '#intake'
import { createWords } from '#words'
import { weatherProblems } from '../src/words/weather-problems.ts'

const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'Europe/Stockholm' })
const header = 'time,airC,humidityPct\n'
const first = '2027-04-01T00:00Z,5,80\n'

const files: readonly string[] = [
  '',
  '\0',
  '\ufffe',
  '# source: none\n',
  header,
  'time,airC,humidtyPct\n',
  'time,airC,wibble,airC\n',
  `${header}2027-04-01T00:00Z,,80\n`,
  `${header}2027-04-01T00:00Z,68,80\n`,
  `${header}2027-04-01T00:00Z,5,0.8\n`,
  header + 'x'.repeat(5000),
  `${header}"2027\n2027-04-01,5\n2027-04-01T00:00,5,80\nnow,5,80\n2027-04-01T00:00Z,warm,101\n2027`,
  `time;airC;humidityPct\n2027-04-01T00:00Z;5,5;80\n`,
  `${header}${first}2027-04-01T00:20Z,5,80\n${first}2027-04-01T00:00Z,6,80\n2027-04-01T05:00Z,5,80\n`,
  `${header}2027-04-01T01:00Z,5,80\n${first}2060-04-01T00:00Z,5,80\n2027-04-01T01:00Z,,80\n`,
  header + 'now,1,1\n'.repeat(60),
  '{',
  '{}',
  kept('met.json'),
  kept('met.json').replace('"celsius"', '"réaumur"').replace('80.0', '"damp"').replace('05:00:00Z', 'tea'),
  kept('nws-grid.json'),
  kept('open-meteo.json').replace('"utc_offset_seconds"', '"off"'),
  kept('open-meteo.json').replace('0.5,', ''),
  kept('open-meteo.json').replace('51.8', '518'),
  kept('open-meteo.json').replace('T11:00', 'T10:00'),
  firstAgain(kept('met.json')),
  kept('two-days.epw'),
  kept('two-days.epw').replace('LOCATION', 'LOCATION,,').replace('1,2,3,0', '1,2,3,30'),
  kept('two-days.epw').replace('2019,1,2,5,0', '2019,1,2,5,30'),
  kept('two-days.epw').replaceAll('2019,1,2,', '1987,1,2,'),
  wholeYear(kept('two-days.epw')),
  'Time,Temp,Second\n01/02/2027 06:00,15,80\n',
]

/** Tables of other makes, by the clock of a place. */
const tables: readonly string[] = [
  'Time,No,Temp(°C),RH(%),Rain\n2027-04-14 06:00,1,5,80,0\n2027-04-14 06:20,1,5,80,0\n',
  'Time,Temp(°C),RH(%)\n2027-03-28 01:00,5,80\n2027-03-28 02:00,5,80\n',
  'Time,Temp(°C),RH(%)\n2027-04-14 06:00,5,80\n2027-04-14 06:00,6,80\n2027-04-14,5,5,5\n2027-04-31 01:00,5,5\n',
  'Time,Temp(°C),RH(%)\n2027-04-14 06:00,90,14\n',
  'Time,Temp(°C),RH(%)\n2027-04-14 06:00,40,80\n',
]

function kept(name: string): string {
  return readFileSync(
    new URL(`./files/weather/${name}`, import.meta.url),
    name.endsWith('.epw') ? 'latin1' : 'utf8',
  )
}

/** A forecast that says its first hour a second time. */
function firstAgain(met: string): string {
  const file = JSON.parse(met)
  const { timeseries } = file.properties
  return JSON.stringify({
    ...file,
    properties: { ...file.properties, timeseries: [...timeseries, timeseries[0]] },
  })
}

/** A leap year of the same hour. */
function wholeYear(epw: string): string {
  const lines = epw.split(/\r?\n/)
  const rest = lines[8]!.split(',').slice(4)
  const rows = Array.from({ length: 366 * 24 }, (_, hour) => {
    const day = new Date(Date.UTC(2020, 0, 1, hour))
    return [2020, day.getUTCMonth() + 1, day.getUTCDate(), day.getUTCHours() + 1, ...rest].join(',')
  })
  return [...lines.slice(0, 8), ...rows].join('\r\n')
}

describe('every problem of a weather file', () => {
  const read = (file: string, hints = {}) => readWeather(new TextEncoder().encode(file), hints).problems
  const problems = [
    ...files.flatMap((file) => read(file)),
    ...tables.flatMap((file) => read(file, { zone: 'Europe/Stockholm' })),
    ...read(tables[0]!, { zone: 'Nowhere' }),
    ...read(tables[0]!, { zone: '+01:00', columns: { No: { to: 'windMps', unit: '°F' } } }),
  ]

  it('is said with all its figures', () => {
    for (const { code, data } of problems) {
      const said = words.sentence(code, data)
      expect(said, code).not.toMatch(/\?|NaN|undefined|[{}]/)
      expect(said, code).not.toContain('intake.')
    }
  })

  it('comes up in the files tried here, so that none goes unread', () => {
    const codes = new Set(problems.map((problem) => problem.code))
    const untold = Object.keys(weatherProblems).filter(
      (code) => code.startsWith('intake.') && !codes.has(code),
    )
    // Those of files too large to keep here, and of more than fifty notes.
    expect(untold).toEqual(['intake.fileTooLarge', 'intake.tooManyRows', 'intake.moreNotes'])
  })
})

describe('every limit', () => {
  const all = Object.keys(limitUnits) as Limit[]
  const failing = (limit: Limit, change: Partial<FailingLimit>): FailingLimit => ({
    limit,
    effect: 'no',
    needed: 3,
    had: 2.1,
    inHours: 0,
    ...change,
  })

  it('is said with all its figures, now and in some hours', () => {
    for (const note of all.flatMap((limit) =>
      [0, 1, 5].map((inHours) => limitNote(failing(limit, { inHours }))),
    ))
      expect(words.sentence(note.code, note.data), note.code).not.toMatch(/\?|[{}]|climate\./)
  })

  it('is said when its figure is not known', () => {
    for (const limit of ['airLeast', 'humidity', 'dewMargin', 'wind', 'rain'] as const) {
      const note = limitNote(failing(limit, { had: null, effect: 'unknown', inHours: 2 }))
      expect(words.sentence(note.code, note.data), note.code).not.toMatch(/\?|[{}]|climate\./)
    }
  })

  it('reads as one would say it', () => {
    const say = (limit: Limit, change: Partial<FailingLimit>) => {
      const note = limitNote(failing(limit, change))
      return plain(words.sentence(note.code, note.data))
    }
    expect(say('dewMargin', { inHours: 4 })).toBe(
      'In 4 hours, with the film still fresh, the surface is too close to the dew point: 2.1 °C over it, 3 °C is needed.',
    )
    expect(say('wetSince', { needed: 1, had: 0 })).toBe(
      'The surface was wet and has been drying for 0 min; it takes 1 h.',
    )
    expect(say('rain', { effect: 'risky', needed: 0, had: null })).toBe('Nobody knows whether it rains.')
    expect(say('rainChance', { effect: 'risky', needed: 0.2, had: 0.3 })).toBe(
      'The chance of rain is 30 %; from 20 % it is a risk.',
    )
  })
})

it('what a shelter is taken to do is said', () => {
  const { code, data } = shelterNote('heated shed')
  expect(plain(words.sentence(code, data))).toBe(
    'What the shelter does is assumed (heated shed): wind at the hull 0 % of the wind outside, air inside 3 h and that in the boat 3 h behind. The skin is worked from what the roof or cloth lets through of the light and from how warm it is itself, by sun and night sky, its colour taken as light. A surface thermometer firms it up.',
  )
})

/** Spaces that keep a figure and its unit together, as plain ones. */
function plain(text: string): string {
  return text.replace(/[\u00a0\u2009\u202f]/g, ' ')
}
