/** The cautions that belong to a sheet: those of the whole job, and those of its kinds of step. */
import type { ReactNode } from 'react'
import type { Caution } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../job/job-view.ts'
import { CautionPanel } from '../parts/index.ts'

export type SheetCautionsProps = {
  readonly view: Pick<JobView, 'plan' | 'words'>
  /** Kinds of step. */
  readonly kinds: readonly string[]
  /** Those over the whole job too. */
  readonly job?: boolean
}

export const SheetCautions = ({ view: { plan, words }, kinds, job = false }: SheetCautionsProps) => {
  if (!plan) return null
  const steps = new Set(plan.steps.steps.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id))
  return plan.cautions.cautions
    .filter((caution) => (caution.steps.length === 0 ? job : caution.steps.some((id) => steps.has(id))))
    .map((caution) => <CautionOf key={caution.code} caution={caution} words={words} />)
}

type CautionOfProps = {
  readonly caution: Caution
  readonly words: JobView['words']
  /** What can be done with it. */
  readonly children?: ReactNode
}

export const CautionOf = ({ caution, words, children }: CautionOfProps) => (
  <CautionPanel signal={caution.severity}>
    <p>{cautionText(caution, words)}</p>
    {children}
  </CautionPanel>
)

/** In full, with what is worn. */
export const cautionText = (
  { code, data, protection }: Pick<Caution, 'code' | 'data' | 'protection'>,
  words: JobView['words'],
): string =>
  [
    words.sentence(code, data),
    ...(protection.length === 0
      ? []
      : [
          words.sentence('paper.protection', {
            words: protection.map((each) => labelOf(`protection.${each}`)).join(', '),
          }),
        ]),
  ].join(' ')
