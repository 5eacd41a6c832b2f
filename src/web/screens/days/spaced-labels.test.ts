import { expect, it } from 'vitest'
import { spacedLabels } from './spaced-labels.ts'

it('names stand at their bars while there is room, else under the name before', () => {
  expect(spacedLabels({ at: [10, 20, 200, 210], high: 50 })).toEqual({
    tops: [10, 60, 200, 250],
    bottom: 300,
  })
  expect(spacedLabels({ at: [], high: 50 })).toEqual({ tops: [], bottom: 0 })
})
