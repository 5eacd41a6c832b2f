import { describe, expect, it } from 'vitest'
import { type Dimension, readOrThrow } from '#units'
import { figure, type PublishedCheck, type PublishedRow, published } from './published.ts'

/** A row that is read as a person writes it. */
type WrittenRow = PublishedRow & { readonly text: string; readonly dimension: Dimension }

const value = ({ text, dimension }: WrittenRow): number => readOrThrow(text, dimension).value
const powerOfTen = ({ given }: WrittenRow): number => figure(given, 'powerOfTen')

/** Divides by a power of ten, and not by its inexact inverse. */
const over = (amount: number, power: number): number =>
  power < 0 ? amount * 10 ** -power : amount / 10 ** power

const answers: Readonly<Record<string, (row: WrittenRow) => number>> = {
  mantissa: (row) => over(value(row), powerOfTen(row)),
  mantissaPerSecond: (row) => over(value(row) / 3600, powerOfTen(row)),
  si: (row) => value(row) * figure(row.given, 'times'),
}

const checkRows = (check: PublishedCheck): void => {
  const answer = answers[check.of]
  it.each(check.rows as readonly WrittenRow[])(`$text is $expected within ${check.tolerance}`, (row) => {
    expect(Math.abs((answer?.(row) ?? Number.NaN) - row.expected)).toBeLessThanOrEqual(check.tolerance)
  })
}

for (const name of ['unit-factors', 'unit-trade']) {
  const source = published(name)
  describe(source.source, () => {
    for (const check of source.checks) checkRows(check)
  })
}
