import { describe, expect, it } from 'vitest'
import { shapeBox } from '../../../test/support/extent.ts'
import { paperPlan } from '../../../test/support/paper-plan.ts'
import type { Setter } from '../setter.ts'
import { bandsOf, dryTogether } from './bands.ts'
import { type FailedLayers, failedSection, failedSize } from './failed-section.ts'
import { stacksOf } from './stacks.ts'

describe('a section at true scale', () => {
  it('gives new films heights in the ratio of their dry films, whatever lies below', () => {
    const stack = stacksOf(paperPlan).find((one) => one.layers.filter(({ spot }) => !spot).length > 1)!
    const bands = bandsOf(stack, 'true').bands.filter(({ id }) => id.startsWith('new:'))
    const all = bands.reduce((sum, { height }) => sum + height, 0)
    expect(bands.length).toBeGreaterThan(1)
    for (const { id, height } of bands) {
      const { dryFilmM, coats } = stack.layers[Number(id.slice(4))]!
      expect(height / all).toBeCloseTo(((dryFilmM?.value ?? 0) * coats) / dryTogether(stack), 9)
    }
    expect(bandsOf(stack, 'true').bands.at(-1)?.height).toBe(bandsOf(stack).bands.at(-1)?.height)
  })

  it('is drawn readable where nobody knows a film', () => {
    const [stack] = stacksOf(paperPlan)
    const unknown = { ...stack!, layers: stack!.layers.map(({ dryFilmM: _, ...layer }) => layer) }
    expect(bandsOf(unknown, 'true')).toEqual(bandsOf(unknown))
  })
})

/** No letter stands in these drawings. */
const noText: Setter = {
  width: () => {
    throw new Error('section: text, got some, expected none')
  },
} as unknown as Setter

describe('a shortcut that failed', () => {
  const kinds = ['lifts', 'peels', 'stays wet', 'craters', 'softens', 'shows through'] as const

  it.each(kinds)('is drawn as it looks when it %s, inside its small section', (fails) => {
    const layers: FailedLayers = {
      under: { family: 'epoxy', role: 'primer' },
      ...(fails === 'softens' ? {} : { over: { family: 'two-part polyurethane', role: 'finish' } }),
      fails,
    }
    const drawing = failedSection(layers)
    for (const shape of drawing) {
      const { x, y, width, height } = shapeBox(shape, noText)
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(0)
      expect(x + width).toBeLessThanOrEqual(failedSize.width + 1e-9)
      expect(y + height).toBeLessThanOrEqual(failedSize.height)
    }
    const fault = drawing.filter((shape) => 'ink' in shape && shape.ink === 'fault')
    expect(fault.length).toBeGreaterThan(0)
    const others = kinds
      .filter((kind) => kind !== fails)
      .map((kind) => failedSection({ ...layers, fails: kind }))
    expect(others.map((other) => JSON.stringify(other))).not.toContain(JSON.stringify(drawing))
  })
})
