import papaparse from 'papaparse'
import { describe, expect, it } from 'vitest'
import type { Plan } from '#plan'
import { paperJob, paperPlan } from '../../../test/support/paper-plan.ts'
import { testPress } from '../../../test/support/paper-press.ts'
import { createKit } from '../kit.ts'
import { createSetter } from '../setter.ts'
import type { PaperJob } from '../types.ts'
import { shoppingListCsv } from './shopping-list.ts'

const setter = createSetter(await testPress())
const csv = (plan: Plan, job: PaperJob = paperJob): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(
    shoppingListCsv(createKit({ plan, job, page: 'A4' }, setter)),
  )
const rows = (text: string): readonly (readonly string[])[] =>
  papaparse.parse<string[]>(text.replace('\ufeff', ''), { skipEmptyLines: true }).data

const named = (name: string): Plan => ({
  ...paperPlan,
  stores: {
    ...paperPlan.stores,
    items: paperPlan.stores.items.map((item) => ({ ...item, name, colour: name })),
  },
})

describe('the shopping list', () => {
  it('begins with a byte-order mark and ends every line with a carriage return and a line feed', () => {
    const text = csv(paperPlan)
    expect(text.charCodeAt(0)).toBe(0xfeff)
    expect(text.endsWith('\r\n')).toBe(true)
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  })

  it('has the unit of each amount in its head, by the system of the reader', () => {
    expect(rows(csv(paperPlan))[0]).toEqual(
      expect.arrayContaining(['Needed (L)', 'Pack size (L)', 'Needed length (m)', 'Price each (EUR)']),
    )
    const us = rows(csv(paperPlan, { ...paperJob, units: 'us', locale: 'en-US' }))
    expect(us[0]).toEqual(expect.arrayContaining(['Needed (qt)', 'Needed length (ft)']))
    expect(us[1]![2]).toBe('3.276')
  })

  it('gives a row to each size of pack and what is needed only once', () => {
    const [, first, second] = rows(csv(paperPlan))
    expect(first).toEqual([
      'Epoxy primer, grey',
      'grey',
      '3.1',
      '0.31',
      '1',
      '1',
      '1',
      '',
      '',
      '42.50',
      '42.50',
      'sheet',
    ])
    expect(second).toEqual([
      'Epoxy primer, grey',
      'grey',
      '',
      '',
      '',
      '1',
      '2.5',
      '',
      '',
      '79.00',
      '79.00',
      'sheet',
    ])
  })

  it('lists what is used up by length, piece or volume, priced where there is a price', () => {
    const found = new Map(rows(csv(paperPlan)).map((row) => [row[0], row]))
    expect(found.get('Gloves')!.slice(8)).toEqual(['12', '0.33', '3.96', 'assumed'])
    expect(found.get('Masking tape')![7]).toBe('24')
    expect(found.get('Thinner for Epoxy primer, grey')![2]).toBe('0.4')
  })

  it.each(['=1+1', '+1', '-1', '@sum', '\t=1', ' =1', '|calc', '\uff1d1', '%0a'])(
    'takes %j for text, not for a formula',
    (name) => {
      const [, row] = rows(csv(named(name)))
      expect(row![0]).toBe(`'${name}`)
      expect(row![1]).toBe(`'${name}`)
    },
  )

  it.each(['A "white" tin, 1 L', 'two\nlines', 'semi;colon', 'Ægir µ ²'])(
    'brings %j back as it was',
    (name) => {
      expect(rows(csv(named(name)))[1]![0]).toBe(name)
    },
  )

  it('names no currency and no price without money', () => {
    const { money: _money, ...plan } = paperPlan
    const bare: Plan = {
      ...plan,
      stores: {
        ...plan.stores,
        items: plan.stores.items.map((item) => ({
          ...item,
          buy: item.buy.map(({ priceCoins: _price, ...pack }) => pack),
        })),
      },
    }
    const [head, first] = rows(csv(bare))
    expect(head).toContain('Price each')
    expect(first!.slice(9, 11)).toEqual(['', ''])
  })
})
