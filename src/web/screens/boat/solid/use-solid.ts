/** The triangles of the boat, asked of the worker for the plan that is shown; the old ones stay until the new come. */
import { useEffect, useState } from 'react'
import type { Solid } from '#plan'
import type { JobView } from '../../../job/job-view.ts'
import type { ShownPlan } from '../../../worker/messages.ts'

export type SolidState = { readonly solid?: Solid; readonly asked: boolean }

export function useSolid({ ask }: Pick<JobView, 'ask'>, { surfaces, marks }: ShownPlan): SolidState {
  const [state, setState] = useState<SolidState>({ asked: false })
  // Hull, zones and stripes are all it is made of; a stage that did not change is the same object.
  useEffect(() => {
    let stale = !surfaces || !marks
    ask({ kind: 'solid' }).then(
      (solid) => {
        if (!stale) setState({ ...(solid ? { solid } : {}), asked: true })
      },
      () => {
        if (!stale) setState({ asked: true })
      },
    )
    return () => {
      stale = true
    }
  }, [ask, surfaces, marks])
  return state
}
