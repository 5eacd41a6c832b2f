/** Whether a surface is sanded where it has to be, with a grit that suits, and whether its window opens at all. */
import type { Fault } from './fault.ts'
import type { Joint } from './judged.ts'
import { type CoatClocks, isGrit, type Sanding, type StackLayer } from './stack.ts'

/** Grains within this share of the range are the same grade of another system: P120 is 125 µm, 120 is 116. */
const SAME_GRADE = 1.1

export function sandingFaults(
  { layer, under, kind, material, bond }: Omit<Joint, 'acts'>,
  sanding: Sanding,
): readonly Fault[] {
  const { grit, key } = bond.preparation
  if (!grit || bond.verdict === 'no') return []
  const source = bond.says.find((said) => said.grit)?.source ?? 'assumed'
  const at = { layer, under }
  if (!isGrit(sanding)) {
    const needed = key === 'always' || (key === 'past the window' && material.age === 'old')
    if (!needed) return []
    return kind === 'between coats'
      ? [{ ...at, kind: 'between not sanded', finest: grit.finest, source }]
      : [{ ...at, kind: 'not sanded', ...grit, source }]
  }
  const about = { ...at, grit: sanding, ...grit, source }
  if (sanding.sizeM > grit.coarsest.sizeM * SAME_GRADE) return [{ ...about, kind: 'too coarse' }]
  if (sanding.sizeM < grit.finest.sizeM / SAME_GRADE) return [{ ...about, kind: 'too fine' }]
  return []
}

/** Unsanded on a fresh coat, there must be a time that is neither too early nor too late. */
export function windowFaults(
  { layer, under, bond, material }: Omit<Joint, 'acts'>,
  over: StackLayer,
  { recoatLeastH, recoatMostH }: CoatClocks,
): readonly Fault[] {
  if (bond.preparation.key !== 'past the window' || material.age !== 'fresh' || isGrit(over.before)) return []
  const leastH = Math.max(recoatLeastH ?? 0, bond.wait?.hours ?? 0)
  if (recoatMostH === undefined || leastH <= recoatMostH) return []
  return [{ kind: 'window never open', layer, under, leastH, mostH: recoatMostH }]
}
