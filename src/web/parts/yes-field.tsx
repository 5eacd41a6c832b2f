/** A box to tick, 48 px; its words stand beside it and are part of the target. */
import './yes-field.css'
import { type FieldFrame, Said, useFieldIds } from './field.tsx'

export type YesFieldProps = FieldFrame & {
  readonly value: boolean
  readonly onChange: (value: boolean) => void
  readonly disabled?: boolean | undefined
  /** The box at the right, as in a list of steps. */
  readonly boxLast?: boolean | undefined
}

export const YesField = (props: YesFieldProps) => {
  const { label, value, onChange, disabled, boxLast, problem, help } = props
  const ids = useFieldIds(props)
  return (
    <div className={boxLast ? 'yes-field yes-field-last' : 'yes-field'}>
      <label className="yes-field-row" htmlFor={ids.id}>
        <input
          {...ids}
          type="checkbox"
          checked={value}
          disabled={disabled}
          onChange={(event) => onChange(event.currentTarget.checked)}
        />
        <svg className="yes-field-box" width="48" height="48" viewBox="0 0 48 48" aria-hidden="true">
          <rect x="1" y="1" width="46" height="46" fill="var(--raised)" stroke="var(--ink)" strokeWidth="2" />
          <g className="yes-field-tick">
            <rect x="1" y="1" width="46" height="46" fill="var(--ink)" />
            <path d="m13.5 24.5 8 8 14-15" fill="none" stroke="var(--onink)" strokeWidth="4.5" />
          </g>
        </svg>
        <span className="yes-field-label">{label}</span>
      </label>
      <Said ids={ids} problem={problem} help={help} />
    </div>
  )
}
