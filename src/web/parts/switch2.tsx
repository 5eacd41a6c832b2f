/** A two-way switch: two joined boxes, one filled. For a view, such as Readable and True scale. */
import { ChoiceField } from './choice-field.tsx'
import './switch2.css'

export type Switch2Props<Value extends string> = {
  /** Read out, not seen. */
  readonly label: string
  readonly choices: readonly [Switch2Choice<Value>, Switch2Choice<Value>]
  readonly value: Value
  readonly onChange: (value: Value) => void
}

export type Switch2Choice<Value extends string> = { readonly value: Value; readonly label: string }

export function Switch2<Value extends string>({ label, ...choice }: Switch2Props<Value>) {
  return (
    <div className="switch2 off-paper">
      <ChoiceField as="boxes" label={<span className="unseen">{label}</span>} {...choice} />
    </div>
  )
}
