/** One job: the stick with its rooms, the sheet of the room that is open, and what is always in sight. */
import { Suspense, useEffect, useState, useSyncExternalStore } from 'react'
import type { ShopJob } from '#replica'
import { createWords, labelOf } from '#words'
import type { Device } from '../device/device.ts'
import type { JobView } from '../job/job-view.ts'
import { useOpenJob } from '../job/use-open-job.ts'
import { Banner, Desk, LinkButton, Progress, Sheet, StoryStick, TitleBlock } from '../parts/index.ts'
import { besides, rooms } from '../screens/rooms.ts'
import { ClashNotes } from './clash-notes.tsx'
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

const plainWords = createWords({ locale: 'en-GB', system: 'metric' })

export const JobPage = ({ device, job, room, rest, go }: JobPageProps) => {
  const view = useOpenJob(device, job.id)
  // A job cannot even be opened where the database was taken away.
  const fault = useSyncExternalStore(device.listen, device.fault)
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
      banner={
        view ? (
          <>
            <JobBanner view={view} device={device} />
            <ClashNotes view={view} />
          </>
        ) : fault === undefined ? null : (
          <Banner fault>{plainWords.sentence(fault)}</Banner>
        )
      }
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

/** How long the server is waited for where this device has nothing of the job, ms. */
const patienceMs = 5000

/** Nothing of the job is on this device: it is on its way, or there is none at this address. */
const NotHere = ({ view: { kept, words } }: { readonly view: JobView }) => {
  const [late, setLate] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), patienceMs)
    return () => clearTimeout(timer)
  }, [])
  if (!late && kept.where !== 'both') return <Waiting />
  return (
    <Sheet
      title={words.sentence('frame.unknownJob')}
      action={
        <LinkButton href="/" next>
          {labelOf('frame.toJobs')}
        </LinkButton>
      }
    />
  )
}

const Waiting = () => (
  <Sheet title={labelOf('frame.opening')}>
    <Progress label={labelOf('frame.opening')} />
  </Sheet>
)
