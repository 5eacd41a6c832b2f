import { describe, expect, it } from 'vitest'
import { sums } from '#sums'
import { createWords } from '#words'
import { cupLevels, cupTaper } from './cup-levels.ts'
import { readKeptSums, type SumsShelf, withText, writeKeptSums } from './kept-sums.ts'
import { leadingResults, saySum, verdictOf } from './say-sum.ts'
import { examplesOf } from './sum-examples.ts'
import { workSum } from './work-sum.ts'

const all = Object.values(sums)
const systems = ['metric', 'us'] as const

describe('a sum worked from its boxes', () => {
  it.each(systems)('has an answer, a sentence and a large figure for its examples in %s units', (system) => {
    const words = createWords({ locale: 'en-GB', system })
    for (const sum of all) {
      const { answer, faults } = workSum(sum, examplesOf(sum, system))
      expect(faults, sum.id).toEqual({})
      if (answer === undefined) throw new Error(`${sum.id} has no answer`)
      const { code, data } = saySum(sum.id, answer, (side) => side)
      expect(words.sentence(code, data), sum.id).not.toMatch(/sumscreen|\?|NaN/)
      expect(leadingResults(sum.id, answer).length, sum.id).toBeGreaterThan(0)
    }
  })

  it('names every empty box that is needed', () => {
    expect(workSum(sums.dew, {}).missing).toEqual(['air', 'humidity'])
    expect(workSum(sums.dew, { air: '  ' }).missing).toEqual(['air', 'humidity'])
  })

  it('says of each wrong box what is wrong, also beside an empty one', () => {
    const { faults, missing, answer } = workSum(sums.mix, { ratio: 'two', thinner: '10 bananas' })
    expect(Object.keys(faults)).toEqual(['ratio', 'thinner'])
    expect(missing).toEqual(['volume'])
    expect(answer).toBeUndefined()
  })

  it('lays the fault of a text that only the sum can read on its box', () => {
    const typed = { latitude: '95 N', longitude: '73.2 W', at: '2027-06-21T09:00-04:00', bow: '135' }
    expect(workSum(sums.sun, typed).faults.latitude?.code).toBe('sums.badPlace')
  })

  it('survives whatever is typed', () => {
    const bad = [
      '',
      '0',
      '-1',
      '1e999',
      '9'.repeat(150),
      'NaN',
      '∞',
      '1/0',
      '2:0',
      '0:0',
      '-273.16 C',
      '💧',
      '__proto__',
      '100%',
      '1 in',
      '5C:1h,5C:2h',
      '25C:0h',
    ]
    for (const sum of all)
      for (const text of bad)
        for (const { name } of sum.inputs) {
          const { answer, faults } = workSum(sum, { ...examplesOf(sum, 'metric'), [name]: text })
          if (answer === undefined) continue
          expect(faults).toEqual({})
          const { data } = saySum(sum.id, answer, (side) => side)
          for (const value of Object.values(data)) expect(value, `${sum.id} ${name} ${text}`).not.toBeNaN()
        }
  })
})

describe('the verdict', () => {
  const verdict = (surface: string) => {
    const { answer } = workSum(sums.dew, { air: '16C', humidity: '71%', surface })
    return answer && verdictOf('dew', answer)
  }

  it('is go over the margin and no under it, each by its own word', () => {
    expect(verdict('15C')).toEqual({ go: true, word: 'sumVerdict.dry' })
    expect(verdict('13C')).toEqual({ go: false, word: 'sumVerdict.close' })
    expect(verdict('9C')).toEqual({ go: false, word: 'sumVerdict.wet' })
  })

  it('is not given without the surface', () => {
    const { answer } = workSum(sums.dew, { air: '16C', humidity: '71%' })
    expect(answer && verdictOf('dew', answer)).toBeUndefined()
  })
})

describe('what was typed last', () => {
  const shelfOf = (text: string | null): SumsShelf => {
    let kept = text
    return {
      getItem: () => kept,
      setItem: (_, next) => {
        kept = next
      },
    }
  }

  it('comes back as it was, and an emptied box is gone', () => {
    const shelf = shelfOf(null)
    const typed = withText(readKeptSums(shelf, 'en-US'), { id: 'dew', name: 'air', text: '16C' })
    expect(writeKeptSums(shelf, typed)).toBe(true)
    expect(readKeptSums(shelf, 'en-GB')).toEqual({ system: 'us', texts: { dew: { air: '16C' } } })
    expect(withText(typed, { id: 'dew', name: 'air', text: '' }).texts.dew).toEqual({})
  })

  it.each([
    '',
    'null',
    '[]',
    '{',
    '{"texts":[1]}',
    '{"texts":{"dew":"x"},"system":7}',
    '{"texts":{"dew":{"air":5,"toString":"x","sun":"y"}}}',
  ])('is nothing when the shelf holds %s', (text) => {
    expect(readKeptSums(shelfOf(text), 'de-DE')).toEqual({ system: 'metric', texts: {} })
  })

  it('is lost, and said to be, when the browser refuses', () => {
    const shelf: SumsShelf = {
      getItem: () => {
        throw new Error('shut')
      },
      setItem: () => {
        throw new Error('full')
      },
    }
    expect(readKeptSums(shelf, 'en-GB').texts).toEqual({})
    expect(writeKeptSums(shelf, { system: 'us', texts: {} })).toBe(false)
    expect(writeKeptSums(undefined, { system: 'us', texts: {} })).toBe(false)
  })
})

describe('the levels in the cup', () => {
  it('hold the volumes that were poured, by the formula of a cut cone', () => {
    const levels = cupLevels([
      { key: 'base', volumeMl: 260 },
      { key: 'hardener', volumeMl: 130 },
      { key: 'thinner', volumeMl: 39 },
      { key: 'additive', volumeMl: 0 },
    ])
    expect(levels.map(({ toMl }) => toMl)).toEqual([260, 390, 429])
    const { bottom, rim } = cupTaper
    const volume = (height: number) => {
      const top = bottom + height * (rim - bottom)
      return (height * (bottom * bottom + bottom * top + top * top)) / 3
    }
    const [base, hardener, thinner] = levels.map(({ height }) => volume(height))
    expect((base ?? 0) / (thinner ?? 1)).toBeCloseTo(260 / 429, 9)
    expect((hardener ?? 0) / (thinner ?? 1)).toBeCloseTo(390 / 429, 9)
    expect((thinner ?? 0) / volume(1)).toBeCloseTo(1 / 1.3, 9)
  })
})
