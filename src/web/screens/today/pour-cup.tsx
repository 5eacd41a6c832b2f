/** One pour in the cup: what goes in, in what order, up to which line. */
import type { Pour } from '#plan'
import { labelOf } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { Cup } from '../sums/cup.tsx'
import { cupLevels } from '../sums/cup-levels.ts'

export type PourCupProps = { readonly pour: Pour; readonly view: JobView }

export const PourCup = ({ pour, view }: PourCupProps) => {
  const { words } = view
  const parts = partsOf(pour)
  const levels = cupLevels(parts.map(({ key, volumeM3 }) => ({ key, volumeMl: volumeM3 * 1e6 })))
  if (levels.length === 0) return null
  const rows = levels.map((level) => {
    const part = parts.find(({ key }) => key === level.key)
    return {
      level,
      name: labelOf(part?.label ?? level.key),
      amount: (
        <WayFigure
          view={view}
          of={{ kind: 'pour', step: pour.step, nr: pour.nr, of: part?.key ?? 'base' }}
          text={words.figure('volumeMl', level.volumeMl)}
          certainty="worked"
          size="mix"
          label={labelOf(part?.label ?? level.key)}
        />
      ),
      to: words.sentence('sumscreen.levelTo', { levelMl: level.toMl }),
      mass: part?.massKg === undefined ? undefined : words.figure('massKg', part.massKg),
    }
  })
  const label = words.sentence('sumscreen.cupDrawing', {
    levels: rows.map(({ name, level }) => `${name} ${words.figure('levelMl', level.toMl)}`).join(', '),
  })
  return <Cup rows={rows} label={label} />
}

type Part = {
  readonly key: 'base' | 'hardener' | 'thinner' | 'additive'
  readonly label: string
  readonly volumeM3: number
  readonly massKg?: number | undefined
}

function partsOf({ partsM3, partsKg, thinnerM3, thinnerKg, additiveM3 }: Pour): readonly Part[] {
  const single = partsM3.length === 1
  const keys = ['base', 'hardener'] as const
  return [
    ...partsM3.slice(0, 2).map(
      (volumeM3, at): Part => ({
        key: keys[at] ?? 'base',
        label: single ? 'today.paint' : (['today.partA', 'today.partB'][at] ?? `today.part ${at + 1}`),
        volumeM3,
        massKg: partsKg?.[at],
      }),
    ),
    { key: 'thinner', label: 'today.thinner', volumeM3: thinnerM3, massKg: thinnerKg },
    { key: 'additive', label: 'today.additive', volumeM3: additiveM3 },
  ]
}
