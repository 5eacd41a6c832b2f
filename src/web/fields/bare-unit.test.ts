import { expect, it } from 'vitest'
import { bareUnit } from './bare-unit.ts'

const length = { kind: 'quantity', dimension: 'length', doc: '' } as const

it.each([
  ['1.1', '1200 mm', 'm'],
  ['1100', '1200 mm', 'mm'],
  ['2.6', '2.55 m', 'm'],
  ['30', '31 ft', 'ft'],
  ['26', '25 ft 4 in', 'ft'],
  ['7.9', '25 ft 4 in', 'm'],
  ['6.3', '', 'm'],
  ['6.3', 'wide', 'm'],
])('%s after “%s” is in %s', (text, value, unit) => {
  expect(bareUnit(text, { value, field: length, system: 'metric' })).toBe(unit)
})
