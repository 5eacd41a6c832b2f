import { expect, it } from 'vitest'
import type { RawDocument } from '#job'
import { cornersOf, ringOf, sideOf } from './zone-corners.ts'

const raw = {
  hardstand: '1',
  work: {
    corners: {
      b: { zone: 'sole', fromStern: '1 m', offCentre: 'about -0.5 m', order: 'a1' },
      a: { zone: 'sole', fromStern: '0 m', offCentre: '-0.5 m', order: 'a0' },
      hole: { zone: 'sole', fromStern: '0.5 m', offCentre: '-0.2 m', opening: '1', order: 'a2' },
      bad: { zone: 'sole', fromStern: 'a bit', offCentre: '0 m', order: 'a3' },
      gone: { zone: 'sole', fromStern: '9 m', offCentre: '0 m', gone: 'true', order: 'a4' },
      other: { zone: 'fore', fromStern: '5 m', offCentre: '0 m', order: 'a5' },
    },
  },
} as unknown as RawDocument

it('corners of a zone are read in their order, openings last, and one that cannot be read keeps its number', () => {
  const corners = cornersOf({ raw }, 'sole')
  expect(corners.map(({ id, opening, number }) => [id, opening, number])).toEqual([
    ['a', 0, 1],
    ['b', 0, 2],
    ['bad', 0, 3],
    ['hole', 1, 1],
  ])
  expect(corners[1]!.about).toEqual({ fromStern: false, offCentre: true })
  expect(ringOf(corners, 0)).toEqual([
    [0, -0.5],
    [1, -0.5],
  ])
  expect(sideOf(corners)).toBe('starboard')
})
