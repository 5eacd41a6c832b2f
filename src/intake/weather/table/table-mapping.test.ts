import { expect, it } from 'vitest'
import { columnKeys } from './table-mapping.ts'

it('columns of one name are counted from the left, and no two are called alike', () => {
  expect(columnKeys(['t', 'rh', 't', 't'])).toEqual(['t', 'rh', 't #2', 't #3'])
  expect(columnKeys(['', ''])).toEqual(['', ' #2'])
  expect(columnKeys(['t', 't', 't #2'])).toEqual(['t', 't #3', 't #2'])
})
