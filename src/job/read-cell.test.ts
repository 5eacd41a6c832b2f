import { describe, expect, it } from 'vitest'
import type { Field } from './field.ts'
import { readCell } from './read-cell.ts'

const reading = (field: Field, text: string, currency?: string) => readCell(field, text, { currency })

const hourly: Field = { kind: 'money', per: 'hour', doc: '' }
const piece: Field = { kind: 'money', per: 'piece', doc: '' }
const amount: Field = { kind: 'money', doc: '' }

describe('a price', () => {
  it.each([
    ['£1,200', 120_000],
    ['£12', 1200],
    ['£1,200.50', 120_050],
    ['1,200', 120_000],
    ['12 GBP', 1200],
  ])('%s is read with its currency and as it was written', (text, coins) =>
    expect(reading(amount, text, 'GBP')).toEqual({ ok: true, value: { coins, currency: 'GBP', text } }),
  )

  it.each([
    ['£45/h', hourly],
    ['£45 / hr', hourly],
    ['£45 an hour', hourly],
    ['£45 per hour', hourly],
    ['£45 a tin', piece],
    ['£45 each', piece],
    ['45 per pack', piece],
  ] as const)('%s says what it is for where it is for nothing else', (text, field) =>
    expect(reading(field, text, 'GBP')).toEqual({
      ok: true,
      value: { coins: 4500, currency: 'GBP', text },
    }),
  )

  it.each([
    ['£45/h', amount],
    ['£45/day', hourly],
    ['£45 an hour', piece],
    ['£45/m²', piece],
  ] as const)('%s is not guessed where something else is meant', (text, field) =>
    expect(reading(field, text, 'GBP')).toMatchObject({ ok: false, code: 'units.leftOver' }),
  )

  it('with two readings, and in another currency than the terms, is refused', () => {
    expect(reading(amount, '£1.200', 'GBP')).toMatchObject({ ok: false, code: 'units.ambiguous' })
    expect(reading(amount, '£12', 'EUR')).toMatchObject({ ok: false, code: 'job.currency' })
  })
})

describe('a currency', () => {
  const field: Field = { kind: 'currency', doc: '' }
  it.each([
    ['EUR', 'EUR'],
    ['gbp', 'GBP'],
    ['£', 'GBP'],
    ['€', 'EUR'],
    ['US$', 'USD'],
    ['XXX', 'XXX'],
  ])('%s is %s', (text, code) => expect(reading(field, text)).toEqual({ ok: true, value: code }))

  it.each([
    ['kr', 'job.currencies'],
    ['¥', 'job.currencies'],
    ['sea shells', 'job.noCurrency'],
    ['m²', 'job.noCurrency'],
    ['xyz', 'job.noCurrency'],
  ])('%s is asked for again', (text, code) => expect(reading(field, text)).toMatchObject({ ok: false, code }))
})

describe('a mix', () => {
  const field: Field = { kind: 'ratio', doc: '' }
  it.each(['2:1', '1:1', '1:3', '15:1', '15 to 1', '4:1:1', '1'])('%s is read without a word', (text) =>
    expect(reading(field, text)).not.toHaveProperty('note'),
  )

  it('with far more hardener than base is taken as written, and asked about', () => {
    expect(reading(field, '1:15')).toEqual({
      ok: true,
      value: { parts: [1, 15], text: '1:15' },
      note: { code: 'job.ratioOdd', data: { found: '1:15', base: 1, hardener: 15 } },
    })
  })
})

describe('days of the week', () => {
  const field: Field = { kind: 'weekdays', doc: '' }
  it('may be weekends, and say where hours belong', () => {
    expect(reading(field, 'Weekends')).toEqual({ ok: true, value: [6, 7] })
    expect(reading(field, 'weekday evenings')).toMatchObject({ ok: false, code: 'job.weekdaysHours' })
    expect(reading(field, 'someday')).toMatchObject({ ok: false, code: 'job.weekdays' })
  })
})
