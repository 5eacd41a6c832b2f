/** A field for a name or a few lines of text. */
import './field.css'
import { Field, type FieldFrame, useFieldIds } from './field.tsx'
import { useDraft } from './use-draft.ts'

export type TextFieldProps = FieldFrame & {
  readonly value: string
  readonly onCommit: (text: string) => void
  readonly lines?: boolean | undefined
  readonly readOnly?: boolean | undefined
  readonly narrow?: boolean | undefined
  readonly type?: 'text' | 'email' | 'password' | 'search' | 'url' | undefined
  readonly autoComplete?: string | undefined
  readonly placeholder?: string | undefined
  readonly maxLength?: number | undefined
  /** Called at every keystroke too, for a search that answers while one types. */
  readonly onType?: ((text: string) => void) | undefined
}

export const TextField = (props: TextFieldProps) => {
  const { value, onCommit, onType, lines = false, readOnly, type = 'text' } = props
  const { autoComplete, placeholder, maxLength, ...frame } = props
  const ids = useFieldIds(frame)
  const { onChange, ...draft } = useDraft({ value, onCommit, lines })
  const shared = {
    ...ids,
    ...draft,
    onChange: (event: { readonly currentTarget: { readonly value: string } }) => {
      onType?.(event.currentTarget.value)
      onChange(event)
    },
    className: 'field-input',
    ...{ readOnly, autoComplete, placeholder, maxLength },
  }
  return (
    <Field {...frame} ids={ids}>
      {lines ? <textarea rows={4} {...shared} /> : <input type={type} {...shared} />}
    </Field>
  )
}
