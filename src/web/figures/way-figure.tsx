/** A figure of the plan that can be opened: how it came about is asked of the worker when it is. */
import { useCallback } from 'react'
import type { FigureRef } from '#plan'
import type { JobView } from '../job/job-view.ts'
import { otherSystem } from '../job/other-system.ts'
import { type FigureDetail, type FigureProps, MovedFigure } from '../parts/index.ts'
import { FirmUp, unsureParts } from './firm-up.tsx'
import { sayWay } from './say-way.ts'

export type WayFigureProps = Omit<FigureProps, 'detail'> & {
  readonly view: JobView
  readonly of: FigureRef
  /** What it read before an edit, where that is shown. */
  readonly was?: string | undefined
}

export const WayFigure = ({ view, of, was, ...figure }: WayFigureProps) => (
  <MovedFigure {...figure} was={was} change={view.change.number} detail={useWay(view, of)} />
)

/** Told from the plan that is shown: asked anew when it is another. */
export function useWay(view: JobView, of: FigureRef): () => Promise<FigureDetail | undefined> {
  const { id, ask, words, plan, locale, system, timeZone } = view
  const key = JSON.stringify(of)
  return useCallback(async () => {
    const way = await ask({ kind: 'figure', figure: JSON.parse(key) as FigureRef })
    if (!way) return undefined
    const other = otherSystem({ locale, system, timeZone })
    const detail = sayWay(way, { words, other, currency: plan?.money?.currency })
    const rest = [way.figure, ...way.parts]
    return unsureParts(rest).length === 0 ? detail : { ...detail, firmUp: <FirmUp job={id} parts={rest} /> }
  }, [id, ask, words, plan, locale, system, timeZone, key])
}
