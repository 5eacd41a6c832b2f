/** The page: the list of jobs, a new one, quick sums, or one job with its rooms. */
import { lazy, type ReactNode, Suspense, useSyncExternalStore } from 'react'
import { createWords, labelOf } from '#words'
import type { Device } from '../device/device.ts'
import { Banner, Desk, LinkButton, Progress, Sheet, StoryStick } from '../parts/index.ts'
import { JobsScreen } from '../screens/jobs/jobs-screen.tsx'
import { JobPage } from './job-page.tsx'
import { NotTakenBanner } from './not-taken-banner.tsx'
import { SignIn } from './sign-in.tsx'
import { type Page, usePage } from './use-page.ts'

const NewJobScreen = lazy(() =>
  import('../screens/new-job/new-job-screen.tsx').then((found) => ({ default: found.NewJobScreen })),
)
const SumsScreen = lazy(() =>
  import('../screens/sums/sums-screen.tsx').then((found) => ({ default: found.SumsScreen })),
)
const PartsPage = lazy(() =>
  import('../screens/parts/parts-page.tsx').then((found) => ({ default: found.PartsPage })),
)

export const App = ({ device }: { readonly device: Device }) => {
  const { page, go } = usePage()
  const jobs = useSyncExternalStore(device.listen, device.jobs)
  const sees = useSyncExternalStore(device.listen, device.sees)
  if (page.kind === 'job') {
    const job = jobs.find(({ id }) => id === page.id) ?? { id: page.id, name: '', boatName: '', madeMs: 0 }
    // Opened anew for somebody who may see more, or less.
    const key = `${page.id} ${sees}`
    return <JobPage key={key} device={device} job={job} room={page.room} rest={page.rest} go={go} />
  }
  // It shows the board and the stick too, so nothing stands round it.
  if (page.kind === 'parts') {
    return (
      <Suspense>
        <PartsPage />
      </Suspense>
    )
  }
  return (
    <Outside page={page} device={device} go={go}>
      <Suspense fallback={<Progress label={labelOf('frame.opening')} />}>
        {page.kind === 'jobs' ? <JobsScreen device={device} jobs={jobs} go={go} /> : null}
        {page.kind === 'new' ? <NewJobScreen device={device} go={go} /> : null}
        {page.kind === 'sums' ? <SumsScreen path={page.path} go={go} /> : null}
        {page.kind === 'unknown' ? <Unknown /> : null}
      </Suspense>
    </Outside>
  )
}

type OutsideProps = {
  readonly page: Page
  readonly device: Device
  readonly go: (href: string) => void
  readonly children: ReactNode
}

/** Sheets that belong to no job. */
const Outside = ({ page, device, go, children }: OutsideProps) => {
  const fault = useSyncExternalStore(device.listen, device.fault)
  const signIn = useSyncExternalStore(device.listen, device.connection.mustSignIn)
  const notTaken = useSyncExternalStore(device.listen, device.shopSync.notTaken)
  const rooms = [
    { id: 'jobs', href: '/', label: labelOf('room.jobs'), here: page.kind === 'jobs' },
    { id: 'new', href: '/new', label: labelOf('jobs.new'), here: page.kind === 'new' },
    { id: 'sums', href: '/sums', label: labelOf('room.sums'), here: page.kind === 'sums', foot: true },
  ]
  return (
    <Desk
      stick={<StoryStick rooms={rooms} phone={['jobs', 'new', 'sums']} onGo={go} />}
      banner={
        fault !== undefined ? (
          <Banner fault>{plainWords.sentence(fault)}</Banner>
        ) : signIn ? (
          <SignIn connection={device.connection} />
        ) : notTaken ? (
          <NotTakenBanner why={notTaken} onAgain={device.shopSync.again} />
        ) : null
      }
    >
      {children}
    </Desk>
  )
}

const plainWords = createWords({ locale: 'en-GB', system: 'metric' })

const Unknown = () => (
  <Sheet
    title={plainWords.sentence('frame.unknownPage')}
    action={
      <LinkButton href="/" next>
        {labelOf('frame.toJobs')}
      </LinkButton>
    }
  />
)

/** Where nothing can be kept, nothing is opened: a person would lose what they do. */
export const NoDevice = () => (
  <main>
    <Banner fault>{plainWords.sentence('web.noDevice')}</Banner>
  </main>
)
