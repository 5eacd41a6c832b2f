/** A field for a quantity as people write it, such as "25 ft 4 in"; kept as written. */
import type { ReactNode } from 'react'
import './field.css'
import { Field, type FieldFrame, useFieldIds } from './field.tsx'
import { useDraft } from './use-draft.ts'

export type QuantityFieldProps = FieldFrame & {
  /** As written; empty when there is none. */
  readonly value: string
  readonly onCommit: (text: string) => void
  /** The unit that a bare number is taken in; it leaves the box to a unit that was written. */
  readonly unit?: ReactNode
  /** The figure the plan takes while the box is empty, said in it. */
  readonly placeholder?: string | undefined
  readonly readOnly?: boolean | undefined
  /** A bare number is what people type: a phone shows its digits. */
  readonly digits?: boolean | undefined
  /** Called at every keystroke too, where the answer stands beside the box. */
  readonly onType?: ((text: string) => void) | undefined
}

export const QuantityField = (props: QuantityFieldProps) => {
  const { value, onCommit, onType, unit, placeholder, readOnly, digits, ...frame } = props
  const ids = useFieldIds(frame)
  const { onChange, ...draft } = useDraft({ value, onCommit })
  return (
    <Field {...frame} ids={ids} unit={isBare(draft.value) ? unit : undefined} narrow>
      <input
        {...ids}
        {...draft}
        onChange={(event) => {
          onType?.(event.currentTarget.value)
          onChange(event)
        }}
        className="field-input field-input-right"
        type="text"
        inputMode={digits ? 'decimal' : 'text'}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        placeholder={placeholder}
        readOnly={readOnly}
      />
    </Field>
  )
}

/** 8.4 m, m says it twice. */
const isBare = (text: string): boolean => !/[^\d.,+−-]/.test(text.trim())
