/** What every field has: a label over its box, the box, and below it what is wrong, with a square at its left. */
import type { ReactNode } from 'react'
import { useId } from 'react'
import { labelOf } from '#words'
import './field.css'
import { classes } from './classes.ts'

export type FieldFrame = {
  readonly label: ReactNode
  /** What is wrong with the value, as a sentence. */
  readonly problem?: string | undefined
  /** What to give, said below while nothing is wrong. */
  readonly help?: ReactNode
}

export type FieldIds = {
  readonly id: string
  readonly 'aria-invalid': true | undefined
  readonly 'aria-describedby': string | undefined
}

/** Ids that tie a control to its label and to the sentence below. */
export function useFieldIds({ problem, help }: Pick<FieldFrame, 'problem' | 'help'>): FieldIds {
  const id = useId()
  const said = problem !== undefined || help !== undefined
  return {
    id,
    'aria-invalid': problem === undefined ? undefined : true,
    'aria-describedby': said ? `${id}-said` : undefined,
  }
}

export type FieldProps = FieldFrame & {
  readonly ids: FieldIds
  readonly children: ReactNode
  /** In Lettering in the box, at its right. */
  readonly unit?: ReactNode
  readonly narrow?: boolean | undefined
}

export const Field = ({ label, problem, help, ids, unit, narrow, children }: FieldProps) => (
  <div className={classes('field', narrow && 'field-narrow', problem !== undefined && 'field-wrong')}>
    <label className="field-label" htmlFor={ids.id}>
      {label}
    </label>
    <div className="field-row">
      {problem === undefined ? null : <WrongMark />}
      <div className="field-box">
        {children}
        {unit === undefined ? null : (
          <span className="field-unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </div>
    </div>
    <Said ids={ids} problem={problem} help={help} />
  </div>
)

export const Said = ({ ids, problem, help }: Pick<FieldProps, 'ids' | 'problem' | 'help'>) =>
  problem === undefined && help === undefined ? null : (
    <p className="field-said" id={`${ids.id}-said`}>
      {problem ?? help}
    </p>
  )

export const WrongMark = () => (
  <svg
    className="field-mark"
    width="24"
    height="24"
    viewBox="0 0 24 24"
    role="img"
    aria-label={labelOf('screenPart.wrong')}
  >
    <rect width="24" height="24" fill="var(--fault)" />
    <path d="m6.5 6.5 11 11m0-11-11 11" stroke="var(--mark)" strokeWidth="3" />
  </svg>
)
