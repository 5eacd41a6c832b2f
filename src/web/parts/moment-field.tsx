/** Fields for a date and for a time of day, on the system's own picker. */
import './field.css'
import { Field, type FieldFrame, useFieldIds } from './field.tsx'
import { useDraft } from './use-draft.ts'

export type MomentFieldProps = FieldFrame & {
  /** `2027-05-14` of a date, `07:30` of a time; empty when there is none. */
  readonly value: string
  readonly onCommit: (text: string) => void
  readonly min?: string | undefined
  readonly max?: string | undefined
  readonly readOnly?: boolean | undefined
}

export const DateField = (props: MomentFieldProps) => <MomentField type="date" {...props} />

export const TimeField = (props: MomentFieldProps) => <MomentField type="time" {...props} />

const MomentField = ({
  type,
  value,
  onCommit,
  min,
  max,
  readOnly,
  ...frame
}: MomentFieldProps & { readonly type: 'date' | 'time' }) => {
  const ids = useFieldIds(frame)
  const draft = useDraft({ value, onCommit })
  return (
    <Field {...frame} ids={ids} narrow>
      <input
        {...ids}
        {...draft}
        className="field-input"
        type={type}
        min={min}
        max={max}
        readOnly={readOnly}
      />
    </Field>
  )
}
