/** What every paper is drawn with: the plan, what is known of the job, its words, and measured type. */
import type { Plan } from '#plan'
import { createSay, type Say } from './say.ts'
import type { Setter } from './setter.ts'
import type { PageSize, PaperInput, PaperJob } from './types.ts'

export type Kit = {
  readonly plan: Plan
  readonly job: PaperJob
  readonly page: PageSize
  readonly say: Say
  readonly setter: Setter
}

export const createKit = ({ plan, job, page }: PaperInput, setter: Setter): Kit => ({
  plan,
  job,
  page,
  say: createSay(plan, job),
  setter,
})
