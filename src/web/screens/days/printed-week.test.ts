import { expect, it } from 'vitest'
import { lettersFor } from './printed-week.tsx'

it('letters of the drawing are printed at 8 points at least, however small it is, and never made smaller', () => {
  // 14 px of a drawing at full size are 10.5 points.
  for (const zoom of [0.52, 0.6, 0.75, 0.9, 1])
    expect(14 * lettersFor(zoom) * zoom * 0.75).toBeGreaterThan(7.999)
  expect(lettersFor(1)).toBe(1)
})
