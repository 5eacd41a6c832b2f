import { describe, expect, it } from 'vitest'
import { heightAlong } from './struck-heights.ts'

describe('a struck edge', () => {
  const rows = [
    { xM: 0, m: 0.1 },
    { xM: 1, m: 0.2 },
    { xM: 3, m: 0.8 },
  ]
  const at = heightAlong(rows, ({ m }) => m)

  it('runs straight from row to row, and level beyond them', () => {
    // Closed form: points on the two lines through the rows.
    expect([0, 0.25, 1, 1.5, 2, 3].map(at)).toEqual(
      [0.1, 0.125, 0.2, 0.35, 0.5, 0.8].map((m) => expect.closeTo(m, 12)),
    )
    expect([-1, 5].map(at)).toEqual([0.1, 0.8])
  })
})
