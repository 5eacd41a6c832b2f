/** Words in the units that the job is not written in, for whoever wants a figure in both. */
import { createWords, type Words } from '#words'
import type { JobView } from './job-view.ts'

export const otherSystem = ({
  locale,
  system,
  timeZone,
}: Pick<JobView, 'locale' | 'system' | 'timeZone'>): Words =>
  createWords({ locale, system: system === 'metric' ? 'us' : 'metric', timeZone })
