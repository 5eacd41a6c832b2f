/** The way to tell all at once what was done and not ticked: a button, and after days of silence a part of its own. */
import { useState } from 'react'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Button, Part } from '../../parts/index.ts'
import type { Since } from './behind.ts'
import { CatchUpDialog } from './catch-up-dialog.tsx'

export type CatchUpProps = {
  readonly view: JobView
  readonly since: Since
  /** Says over the sheet that nothing was ticked for days. */
  readonly silent?: boolean
}

export const CatchUp = ({ view, since, silent = false }: CatchUpProps) => {
  const [open, setOpen] = useState(false)
  const button = (
    <Button disabled={view.readOnly} onClick={() => setOpen(true)}>
      {labelOf('today.upToHere')}
    </Button>
  )
  return (
    <>
      {silent ? (
        <Part raised label={labelOf('today.upToHere')}>
          <div className="catch-up">
            <p>{view.words.sentence('todayscreen.silent', { sinceDate: since.date })}</p>
            {button}
          </div>
        </Part>
      ) : (
        <div className="catch-up-below">{button}</div>
      )}
      {open ? <CatchUpDialog view={view} since={since} onClose={() => setOpen(false)} /> : null}
    </>
  )
}
