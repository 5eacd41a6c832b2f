import { describe, expect, it } from 'vitest'
import { paperPlan } from '../../../../test/support/paper-plan.ts'
import { boatLayout, draftLeft, waterPaths } from './boat-layout.ts'

describe('the floating line', () => {
  const outline = paperPlan.surfaces.outline!
  it.each([330, 900])('keeps clear of the figure of the draft, and in the drawing, at %i px', (width) => {
    const layout = boatLayout(outline, width)
    const { lines, sign } = waterPaths(layout)
    const [aft] = layout.side(0, 0)
    const [forward] = layout.side(layout.length, 0)
    const startOf = (path: string): number => Number(/^M([\d.]+)/.exec(path)?.[1])
    // A turned figure of 14 px reaches 3 px right of its foot, which stands 8 px left of its line.
    expect(startOf(lines)).toBeGreaterThan(aft - draftLeft - 8 + 3)
    expect(startOf(sign) - 7).toBeGreaterThan(forward)
    expect(startOf(sign) + 7).toBeLessThan(width)
  })
})
