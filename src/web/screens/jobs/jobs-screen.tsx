/** The list of jobs: on this device, and those that others have put on it. */
import { useSyncExternalStore } from 'react'
import type { ShopJob } from '#replica'
import { createWords, labelOf } from '#words'
import type { Device } from '../../device/device.ts'
import { localDate } from '../../job/local-date.ts'
import { shortName } from '../../job/short-name.ts'
import { Ghost, KeptMark, Ledger, LinkButton, Part, Sheet } from '../../parts/index.ts'
import { DropFiles } from './drop-files.tsx'
import { ImportJob, useJobImport } from './import-job.tsx'
import './jobs.css'

const { timeZone } = Intl.DateTimeFormat().resolvedOptions()
const words = createWords({ locale: navigator.language, system: 'metric', timeZone })

export type JobsScreenProps = {
  readonly device: Device
  readonly jobs: readonly ShopJob[]
  readonly go: (href: string) => void
}

export const JobsScreen = ({ device, jobs, go }: JobsScreenProps) => {
  const files = useJobImport(device, go)
  const onlyHere = useSyncExternalStore(device.listen, device.outbox.onlyHere)
  const online = useSyncExternalStore(device.listen, device.connection.online)
  return (
    <Sheet
      title={words.sentence('jobs.title', { count: jobs.length })}
      say={words.sentence('jobs.say')}
      action={<NewJob go={go} next={jobs.length === 0} />}
    >
      <Part label={labelOf('jobs.list')}>
        <DropFiles onFiles={files.bring} hint={labelOf('import.drop')}>
          {jobs.length === 0 ? (
            <Ghost kind="hull" action={<NewJob go={go} next />}>
              {words.sentence('jobs.none')}
            </Ghost>
          ) : (
            <JobList jobs={jobs} onlyHere={onlyHere} />
          )}
          {onlyHere.length === 0 ? null : (
            <KeptMark
              where="device"
              detail={words.sentence('jobs.onlyHere', {
                count: onlyHere.length,
                reach: online ? 'there' : 'away',
              })}
            />
          )}
          <ImportJob {...files} />
        </DropFiles>
      </Part>
    </Sheet>
  )
}

type JobListProps = Pick<JobsScreenProps, 'jobs'> & { readonly onlyHere: readonly string[] }

const JobList = ({ jobs, onlyHere }: JobListProps) => (
  <Ledger
    caption={labelOf('jobs.list')}
    columns={[
      { key: 'boat', label: labelOf('jobs.boat'), phone: 'first' },
      { key: 'name', label: labelOf('jobs.name'), phone: 'second' },
      ...(onlyHere.length === 0
        ? []
        : [{ key: 'newest', label: labelOf('jobs.newest'), phone: 'second' } as const]),
      { key: 'made', label: labelOf('jobs.made'), align: 'right', phone: 'side' },
    ]}
    rows={jobs.map(({ id, name, boatName, madeMs }) => ({
      id,
      href: `/job/${id}/today`,
      cells: {
        boat: <b className="jobs-name">{shortName(boatName || name || id)}</b>,
        name: boatName === '' ? '' : <span className="jobs-name">{shortName(name)}</span>,
        newest: onlyHere.includes(id) ? labelOf('jobs.here') : '',
        made: madeMs > 0 ? words.date(localDate(Math.floor(madeMs / 60_000), timeZone)) : '',
      },
    }))}
  />
)

const NewJob = ({ go, next }: { readonly go: (href: string) => void; readonly next: boolean }) => (
  <LinkButton
    href="/new"
    next={next}
    onClick={(event) => {
      event.preventDefault()
      go('/new')
    }}
  >
    {labelOf('jobs.new')}
  </LinkButton>
)
