/** Every caution as a signal panel, two side by side, worst first. */
import { heading } from '../blocks.ts'
import { cautionPanel } from '../cautions.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { signalPanel } from '../signal-panel.ts'
import { beside, type Flowing, space } from '../strips.ts'

const gap = 5

export function cautionsPart(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  const { cautions } = plan.cautions
  if (cautions.length === 0) return []
  const measure = measureOf(kit.page)
  const width = (measure.width - gap) / 2
  const panels = cautions.map((caution, index) =>
    signalPanel(cautionPanel(kit, caution), { x: measure.x + (index % 2) * (width + gap), width, setter }),
  )
  const rows = Array.from({ length: Math.ceil(panels.length / 2) }, (_, row) =>
    panels.slice(2 * row, 2 * row + 2),
  )
  return [
    {
      gap: 8,
      heading: heading(say.label('paperPart.cautions'), { ...measure, setter }),
      units: rows.map((row) => [beside(row), space(4)]),
    },
  ]
}
