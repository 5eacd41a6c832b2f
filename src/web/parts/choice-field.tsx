/** A choice: up to four as joined boxes, more as the system's own list. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'
import './choice-field.css'
import './field.css'
import { classes } from './classes.ts'
import { Field, type FieldFrame, type FieldIds, Said, useFieldIds, WrongMark } from './field.tsx'

export type Choice<Value extends string> = {
  readonly value: Value
  readonly label: string
  /** A drawing before the words. */
  readonly icon?: ReactNode
}

export type ChoiceFieldProps<Value extends string> = FieldFrame & {
  readonly choices: readonly Choice<Value>[]
  /** Empty while nothing is chosen. */
  readonly value: Value | ''
  readonly onChange: (value: Value) => void
  /** Boxes or list, whatever the number of choices. */
  readonly as?: 'boxes' | 'list' | undefined
  /** What the list says while nothing is chosen. */
  readonly none?: string | undefined
  readonly disabled?: boolean | undefined
}

export const mostBoxes = 4

export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const ids = useFieldIds(props)
  const { as = props.choices.length <= mostBoxes ? 'boxes' : 'list' } = props
  return as === 'boxes' ? <ChoiceBoxes {...props} ids={ids} /> : <ChoiceList {...props} ids={ids} />
}

type WithIds<Value extends string> = ChoiceFieldProps<Value> & { readonly ids: FieldIds }

function ChoiceBoxes<Value extends string>(props: WithIds<Value>) {
  const { label, choices, value, onChange, problem, help, ids, disabled } = props
  return (
    <fieldset
      className={classes('field choice-field', problem !== undefined && 'field-wrong')}
      aria-describedby={ids['aria-describedby']}
      disabled={disabled}
    >
      <legend className="field-label">{label}</legend>
      <div className="field-row">
        {problem === undefined ? null : <WrongMark />}
        <div className="choice-field-boxes">
          {choices.map((choice) => (
            <label key={choice.value} className="choice-field-box">
              <input
                type="radio"
                name={ids.id}
                value={choice.value}
                checked={choice.value === value}
                onChange={() => onChange(choice.value)}
              />
              <span className="choice-field-face">
                {choice.icon}
                {choice.label}
              </span>
            </label>
          ))}
        </div>
      </div>
      <Said ids={ids} problem={problem} help={help} />
    </fieldset>
  )
}

function ChoiceList<Value extends string>(props: WithIds<Value>) {
  const { choices, value, onChange, none = labelOf('screenPart.notChosen'), ids, disabled } = props
  return (
    <Field {...props} unit={<Arrow />}>
      <select
        {...ids}
        className="field-input"
        value={value}
        disabled={disabled}
        onChange={(event) => {
          const chosen = choices.find((choice) => choice.value === event.currentTarget.value)
          if (chosen) onChange(chosen.value)
        }}
      >
        {value === '' ? <option value="">{none}</option> : null}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </Field>
  )
}

const Arrow = () => (
  <svg width="14" height="9" viewBox="0 0 14 9" aria-hidden="true">
    <path d="m1 1 6 6 6-6" fill="none" stroke="var(--ink)" strokeWidth="2" />
  </svg>
)
