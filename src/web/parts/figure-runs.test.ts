import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import { figureRuns } from './figure-runs.ts'

const seen = (text: string) => figureRuns(text).map((run) => [run.kind, run.text].join(' '))

describe('figureRuns', () => {
  it('parts digits from unit, the space with the unit', () => {
    expect(seen('9.84\u2009m²')).toEqual(['digits 9.84', 'unit \u2009m²'])
    expect(seen('12\u202f500\u2009ft²')[0]).toBe('digits 12\u202f500')
    expect(seen('−3\u2009°C')).toEqual(['digits −3', 'unit \u2009°C'])
  })

  it('keeps a fraction of an inch with its whole number, as one figure', () => {
    const runs = figureRuns('24\u2009ft\u00a07\u00a01/4\u2009in')
    expect(runs.filter((run) => run.kind === 'digits')).toMatchObject([
      { text: '24' },
      { text: '7', fraction: '1/4' },
    ])
    expect(figureRuns('3/8\u2009in')[0]).toMatchObject({ text: '', fraction: '3/8' })
  })

  it('leaves how often out of the figure', () => {
    expect(seen('3 × 25\u2009µm')).toEqual(['count 3 × ', 'digits 25', 'unit \u2009µm'])
  })

  it('loses no sign and takes any text', () => {
    for (const system of ['metric', 'us'] as const) {
      const words = createWords({ locale: 'de-DE', system, timeZone: 'UTC', currency: 'EUR' })
      const texts = [
        words.figure('lengthM', 7.5),
        words.figure('areaM2', 1e9),
        words.figure('costCoins', 125050),
      ]
      for (const text of [...texts, '', '×', '1/', '?', 'none', '3 × ']) {
        const plain = (one: string) => one.replaceAll(/[\s\u00a0]/g, '')
        expect(plain(figureRuns(text).map(whole).join(''))).toBe(plain(text))
      }
    }
  })

  it('gives every run a place of its own', () => {
    const places = figureRuns('3 × 24\u2009ft\u00a07\u00a01/4\u2009in').map((run) => run.at)
    expect(new Set(places).size).toBe(places.length)
  })
})

const whole = (run: ReturnType<typeof figureRuns>[number]): string =>
  run.kind === 'digits' ? `${run.text}${run.fraction ?? ''}` : run.text
