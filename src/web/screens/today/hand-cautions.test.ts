import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it, vi } from 'vitest'
import type { Caution } from '#plan'
import { createWords } from '#words'
import { paperPlan } from '../../../../test/support/paper-plan.ts'
import { HandCautions } from './hand-cautions.tsx'
import { cautionKey, writeCautions } from './read-cautions.ts'

const step = 'coat:port:primer:1'
const caution = (code: string, severity: Caution['severity']): Caution => ({
  ...{ code, severity, data: {}, protection: [], source: '', steps: [step] },
})
const own = [
  caution('caution.mainsWet', 'danger'),
  caution('caution.ragsHeat', 'warning'),
  caution('caution.potHeat', 'warning'),
  caution('caution.sunlight', 'notice'),
]
const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'UTC' })
const textOf = (read: readonly Caution[], today = '2027-05-10') => {
  const kept = new Map<string, string>()
  const shelf = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  }
  vi.stubGlobal('localStorage', shelf)
  writeCautions(shelf, { job: 'teal', date: '2027-05-10' }, new Set(read.map(cautionKey)))
  const plan = { ...paperPlan, cautions: { cautions: own } }
  const view = { id: 'teal', words }
  return renderToStaticMarkup(createElement(HandCautions, { view, plan, step, today }))
}
const count = (text: string, part: RegExp) => text.match(part)?.length ?? 0

describe('the cautions before the step in hand', () => {
  it('stand open until they are read, worst first', () => {
    const text = textOf([])
    expect(count(text, /<details/g)).toBe(0)
    expect(count(text, /role="note"/g)).toBe(3)
    expect(text.indexOf('DANGER')).toBeLessThan(text.indexOf('WARNING'))
    expect(text).toContain('Read all 3')
  })
  it('fold to a line a signal word once read that day, and a danger not with the rest', () => {
    const text = textOf(own.slice(1))
    expect(count(text, /<details/g)).toBe(2)
    expect(count(text, /role="note"/g)).toBe(1)
    expect(text).not.toContain('Read all')
    expect(text.indexOf('DANGER')).toBeLessThan(text.indexOf('<details'))
    expect(count(textOf(own), /<details/g)).toBe(3)
    expect(count(textOf(own), /role="note"/g)).toBe(0)
  })
  it('stand open again the next day', () => {
    expect(count(textOf(own, '2027-05-11'), /<details/g)).toBe(0)
  })
})
