/** How a pour is laid off, in the order in which a person wants to know it. */
import { describeLaying, type Pour } from '#plan'
import type { JobView } from '../job/job-view.ts'
import './laid-off.css'

export const LaidOff = ({ view, pour }: { readonly view: JobView; readonly pour: Pour }) => {
  const said = view.plan ? describeLaying(view.plan, pour) : []
  return said.length === 0 ? null : (
    <ul className="laid-off">
      {said.map(({ code, data }) => (
        <li key={code}>{view.words.sentence(code, data)}</li>
      ))}
    </ul>
  )
}
