/** What the papers need of the job beside the plan, from its work document. */
import type { PlanInput } from '#plan'
import type { PaperJob } from './types.ts'

/**
 * @param options.judgedFromM how far off the standard that the owner chose is judged; only stands in where no words
 * were agreed.
 */
export function paperJob(
  work: PlanInput['work'],
  { judgedFromM }: { readonly judgedFromM: number | undefined },
): PaperJob {
  const { job, place, people } = work
  return {
    name: job.name,
    boatName: job.boatName ?? job.name,
    owner: job.owner ?? '',
    shop: job.shop ?? '',
    place: place.name ?? '',
    ...(job.launch === undefined ? {} : { launchDate: job.launch }),
    finishWords: job.finishWords ?? '',
    ...(job.finishWords === undefined && judgedFromM !== undefined
      ? { inspectionDistanceM: judgedFromM }
      : {}),
    people: people.map(({ id, name }) => ({ id, name })),
    units: job.units ?? 'metric',
    locale: job.locale ?? 'en-GB',
  }
}
