import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, it } from 'vitest'
import { QuantityField } from './quantity-field.tsx'

const unitOf = (value: string, unit: string): string | undefined => {
  const box = { label: 'Length', value, unit, onCommit: () => undefined }
  return /field-unit[^>]*>([^<]*)</.exec(renderToStaticMarkup(createElement(QuantityField, box)))?.[1]
}

it('a unit stands in the box until one is written there', () => {
  expect(unitOf('', 'm')).toBe('m')
  expect(unitOf('8.4', 'm')).toBe('m')
  expect(unitOf('8.4 m', 'm')).toBeUndefined()
  expect(unitOf('25 ft 4 in', 'ft')).toBeUndefined()
  expect(unitOf('54.3°', '°')).toBeUndefined()
  expect(unitOf('−9.5', '°')).toBe('°')
})
