/** One job: the stick with its rooms, the sheet of the room that is open, and what is always in sight. */
import { Suspense } from 'react'
import type { ShopJob } from '#replica'
import { labelOf } from '#words'
import type { Device } from '../device/device.ts'
import type { JobView } from '../job/job-view.ts'
import { useOpenJob } from '../job/use-open-job.ts'
import { Desk, LinkButton, Progress, Sheet, StoryStick, TitleBlock } from '../parts/index.ts'
import { besides, rooms } from '../screens/rooms.ts'
import { JobBanner } from './job-banner.tsx'
import { jobCells, phoneHead } from './job-block.tsx'
import { jobRooms, phoneRooms } from './job-rooms.ts'
import { KeptLine, useHistoryKeys } from './kept-line.tsx'

export type JobPageProps = {
  readonly device: Device
  readonly job: ShopJob
  readonly room: string
  readonly rest: string
  readonly go: (href: string) => void
}

export const JobPage = ({ device, job, room, rest, go }: JobPageProps) => {
  const view = useOpenJob(device, job.id)
  useHistoryKeys(view?.history)
  const href = (to: string): string => `/job/${job.id}/${to}`
  const found = [...rooms, ...besides].find(({ id }) => id === room)
  const block = view ? <TitleBlock cells={jobCells(view, { room, href })} /> : null
  const kept = view ? <KeptLine view={view} /> : null
  return (
    <Desk
      stick={
        <StoryStick
          rooms={jobRooms({ view, here: room, href })}
          phone={phoneRooms}
          onGo={go}
          more={
            <>
              {block}
              {kept}
            </>
          }
        />
      }
      banner={view ? <JobBanner view={view} /> : null}
    >
      <Suspense fallback={<Waiting />}>
        {view && Object.keys(view.raw.work).length === 0 ? (
          <NotHere view={view} />
        ) : view && found ? (
          <found.Screen
            view={view}
            rest={rest}
            href={href}
            go={go}
            block={
              <>
                {block}
                {kept}
              </>
            }
            head={phoneHead(view)}
          />
        ) : (
          <Waiting />
        )}
      </Suspense>
    </Desk>
  )
}

/** Before the first edit reaches this device, or at an address of no job. */
const NotHere = ({ view: { words } }: { readonly view: JobView }) => (
  <Sheet
    title={words.sentence('frame.unknownJob')}
    action={
      <LinkButton href="/" next>
        {labelOf('frame.toJobs')}
      </LinkButton>
    }
  />
)

const Waiting = () => (
  <Sheet title={labelOf('frame.opening')}>
    <Progress label={labelOf('frame.opening')} />
  </Sheet>
)
