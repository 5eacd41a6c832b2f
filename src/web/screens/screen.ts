/** What every screen of a job is given. */
import type { ReactNode } from 'react'
import type { JobView } from '../job/job-view.ts'
import type { SheetHead } from '../parts/index.ts'

export type ScreenProps = {
  readonly view: JobView
  /** What stands behind the room in the address, such as a layer's id. */
  readonly rest: string
  /** Address of a room of this job: `href('build-up/topsides-port')`. */
  readonly href: (room: string) => string
  readonly go: (href: string) => void
  /** Title block and phone's head for the sheet. */
  readonly block: ReactNode
  readonly head: SheetHead
}
