/** Several items of another collection: a box to tick for each. */
import type { ReactNode } from 'react'
import { type Choice, YesField } from '../parts/index.ts'
import './fields.css'

export type RefsFieldProps = {
  readonly label: ReactNode
  readonly problem?: string | undefined
  /** Ids with commas between, as written. */
  readonly value: string
  readonly choices: readonly Choice<string>[]
  readonly readOnly: boolean
  readonly onCommit: (text: string) => void
}

export const RefsField = ({ label, problem, value, choices, readOnly, onCommit }: RefsFieldProps) => {
  const ids = value
    .split(',')
    .map((id) => id.trim())
    .filter((id) => id !== '')
  const turn = (id: string, yes: boolean): void =>
    onCommit((yes ? [...ids, id] : ids.filter((each) => each !== id)).join(', '))
  return (
    <fieldset className="refs-field">
      <legend className="field-label">{label}</legend>
      <div className="refs-field-boxes">
        {choices.map((choice) => (
          <YesField
            key={choice.value}
            label={choice.label}
            value={ids.includes(choice.value)}
            onChange={(yes) => turn(choice.value, yes)}
            disabled={readOnly}
          />
        ))}
      </div>
      {problem === undefined ? null : <p className="field-problem">{problem}</p>}
    </fieldset>
  )
}
