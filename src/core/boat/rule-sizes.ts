/** The sizes and worked areas of a hull that the rules of thumb speak of. */

import { dryArea, wettedArea } from './band-area.ts'
import type { Hull } from './hull.ts'
import { compareWithRules, type RuleCheck, type RuleSizes } from './rules-of-thumb.ts'

/** Freeboard is the mean of stem, mid and stern. */
export const ruleSizesOf = ({ particulars }: Hull): RuleSizes => {
  const { lengthOverall, lengthWaterline, beamOverall, draft } = particulars
  const { freeboardStem, freeboardMid, freeboardStern } = particulars
  return {
    lengthOverall,
    lengthWaterline,
    beam: beamOverall,
    draft,
    freeboard: (freeboardStem + freeboardMid + freeboardStern) / 3,
  }
}

/** Surface above and below the floating waterline, and the plan area inside the sheer, beside the rules of thumb. */
export const compareHullWithRules = (hull: Hull): RuleCheck =>
  compareWithRules(ruleSizesOf(hull), {
    topsides: dryArea(hull).total,
    bottom: wettedArea(hull).total,
    deck: hull.particulars.sheerPlanArea,
  })
