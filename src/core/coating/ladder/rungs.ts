/** The grits that a surface is sanded with, each over as much of it as needs it. */
import type { Grit } from '../bond/rule.ts'
import { gritLadder } from './grit-ladder.ts'

/** A part of the surface and what lies there. */
export type LadderStart = {
  readonly grit: Grit
  /** `proud`: it stands proud and is cut with this grit; `scratched`: its scratches are there already. */
  readonly state: 'proud' | 'scratched'
  /** m² */
  readonly area: number
}

export type Rung = { readonly grit: Grit; readonly area: number }

/**
 * Rungs of all parts together, coarse to fine: each part by the shortest ladder from what lies there, the last grit
 * over all of the surface.
 * @param way.starts parts of the surface; those that stand in no list are as good as the last grit takes them.
 * @param way.area all of the surface, m²: no rung is more than that. @param way.last what the next layer goes on.
 * @param way.grits those at hand, any order. @param way.mostRatio see `gritLadder`.
 */
export function rungsOf(way: {
  readonly starts: readonly LadderStart[]
  readonly area: number
  readonly last: Grit
  readonly grits: readonly Grit[]
  readonly mostRatio: number
}): readonly Rung[] {
  const { starts, area, last } = way
  const parts = starts.flatMap(({ grit: first, state, area: part }) => {
    const ladder = gritLadder({ ...way, first }).slice(0, -1)
    return (state === 'proud' ? ladder : ladder.slice(1)).map((grit) => ({ grit, area: part }))
  })
  const names = new Map(parts.map(({ grit }) => [grit.name, grit]))
  const coarser = [...names.values()]
    .sort((a, b) => b.sizeM - a.sizeM)
    .map((grit) => {
      const own = parts.filter((part) => part.grit.name === grit.name)
      return {
        grit,
        area: Math.min(
          area,
          own.reduce((sum, part) => sum + part.area, 0),
        ),
      }
    })
  return [...coarser, { grit: last, area }]
}
