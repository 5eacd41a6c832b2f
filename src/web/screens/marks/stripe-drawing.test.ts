import { expect, it } from 'vitest'
import { runsOf } from './stripe-drawing.tsx'

it('an edge is dotted as far as a guess reaches, and drawn in pieces that meet', () => {
  const points = [0, 1, 2, 3].map((x) => [x, 0] as const)
  const runs = runsOf(points, ['worked', 'worked', 'worked', 'assumed'])
  expect(runs.map(({ certainty, points: own }) => [certainty, own.map(([x]) => x)])).toEqual([
    ['worked', [0, 1, 2]],
    ['assumed', [2, 3]],
  ])
  expect(runsOf(points.slice(0, 1), ['worked'])).toEqual([])
})
