import { describe, expect, it } from 'vitest'
import { read } from '#units'
import { examplesOf } from './examples.ts'
import type { Field } from './field.ts'
import { logFields, moneyFields, workFields } from './index.ts'
import { readCell } from './read-cell.ts'
import { refFields, targetsFirst } from './references.ts'

const all = { ...workFields, ...moneyFields, ...logFields }
const fields = Object.entries(all).flatMap(([section, { shape, fields }]) =>
  Object.entries(fields as Readonly<Record<string, Field>>).map(([key, field]) => ({
    section,
    shape,
    key,
    field,
  })),
)

describe('the tables', () => {
  it('every cell has a sentence that ends in a full stop', () => {
    for (const { field } of fields) expect(field.doc).toMatch(/^[\p{Lu}`].*\.$/u)
  })

  it('references name a section that is there, or the catalogue', () => {
    const known = [...Object.keys(all), 'catalogue', 'consumables']
    const to = Object.values(all).flatMap((section) => refFields(section.fields).map((ref) => ref.to))
    expect(to.filter((name) => !known.includes(name))).toEqual([])
  })

  it('references form no circle: every section comes behind those it refers to', () => {
    for (const part of [workFields, moneyFields]) {
      const order = targetsFirst(part)
      expect([...order].sort()).toEqual(Object.keys(part).sort())
      for (const [name, section] of Object.entries(part)) {
        for (const { to } of refFields(section.fields)) {
          if (order.includes(to)) expect(order.indexOf(to)).toBeLessThan(order.indexOf(name))
        }
      }
    }
  })

  it('required cells of a single map have a stand-in that can be read, and no others have one', () => {
    for (const { shape, field } of fields) {
      const needed = shape === 'one' && field.need === 'required'
      expect(field.standIn !== undefined).toBe(needed)
      if (field.standIn) expect(readCell(field, field.standIn, { currency: undefined }).ok).toBe(true)
    }
  })

  it('every example can be read, and every bound has room', () => {
    for (const { section, key, field } of fields) {
      for (const example of examplesOf(field)) {
        const reading =
          field.kind === 'quantity'
            ? read(example, field.dimension)
            : readCell(field, example, { currency: undefined })
        expect(reading.ok, `${section}.${key} ${example}`).toBe(true)
      }
      if (field.kind === 'quantity') {
        const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = field
        expect(least).toBeLessThan(most)
        const mayBeNegative = field.sign === 'any' || field.dimension === 'temperature'
        expect(field.least === undefined || field.least >= 0 || mayBeNegative, `${section}.${key}`).toBe(true)
      }
    }
  })
})
