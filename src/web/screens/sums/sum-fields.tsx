/** The boxes of a sum: anything people write, each judged once the person has left it. */
import { useState } from 'react'
import { solvents } from '#catalogue'
import type { Sum, SumField } from '#sums'
import { labelOf, type Words } from '#words'
import { Button, ChoiceField, QuantityField, TextField } from '../../parts/index.ts'
import { exampleOf } from './sum-examples.ts'
import type { SumSheetProps } from './sum-props.ts'
import type { WorkedSum } from './work-sum.ts'

export type SumFieldsProps = Pick<SumSheetProps, 'sum' | 'typed' | 'words' | 'system' | 'onType'> & {
  readonly worked: WorkedSum
}

export const SumFields = (props: SumFieldsProps) => {
  const { sum, typed } = props
  const [first, more] = split(sum)
  const opened = more.some(({ name }) => typed[name] !== undefined)
  return (
    <>
      <Boxes {...props} fields={first} />
      {more.length === 0 ? null : (
        <details className="sums-more" open={opened}>
          <summary className="sums-more-name">{labelOf('sumScreen.more')}</summary>
          <Boxes {...props} fields={more} />
        </details>
      )}
    </>
  )
}

/** Sums whose boxes for weights would push the drawing out of sight. */
const folded: readonly string[] = ['mix', 'bevel']

function split(sum: Sum): readonly [first: readonly SumField[], more: readonly SumField[]] {
  const isMore = ({ required, default: usual }: SumField): boolean =>
    folded.includes(sum.id) && !required && usual === undefined
  return [sum.inputs.filter((field) => !isMore(field)), sum.inputs.filter(isMore)]
}

const Boxes = ({ fields, ...props }: SumFieldsProps & { readonly fields: readonly SumField[] }) => {
  // The box one is in is not called wrong while it is half written.
  const [busy, setBusy] = useState('')
  return (
    <div className="sums-fields">
      {fields.map((field) => (
        <div
          key={field.name}
          className={field.name === 'table' ? 'sums-field-wide' : undefined}
          onFocus={() => setBusy(field.name)}
          onBlur={() => setBusy('')}
        >
          <SumBox {...props} field={field} judged={busy !== field.name} />
        </div>
      ))}
    </div>
  )
}

type BoxProps = SumFieldsProps & { readonly field: SumField; readonly judged: boolean }

const SumBox = (props: BoxProps) => {
  const { sum, field, typed, system, words, onType, worked, judged } = props
  const fault = worked.faults[field.name]
  const name = labelOf(`sumField.${sum.id}.${field.name}`)
  const label =
    field.required || field.default !== undefined ? name : `${name}, ${labelOf('sumScreen.ifKnown')}`
  const value = typed[field.name] ?? ''
  const change = (text: string) => onType(field.name, text)
  const shared = {
    label,
    value,
    help: field.name === 'sense' ? labelOf('sumScreen.senseHelp') : field.doc,
    problem: fault === undefined || !judged ? undefined : problemText(fault, { words, name }),
  }
  if (field.name === 'solvent' || field.name === 'sense')
    return <ChoiceField {...shared} {...choicesOf(field, value)} onChange={change} />
  const usual =
    field.default === undefined ? undefined : exampleOf({ ...field, example: field.default }, system)
  const placeholder = usual ?? words.sentence('sumscreen.such', { example: exampleOf(field, system) })
  const box = { ...shared, placeholder, onCommit: change, onType: change }
  if (field.name === 'table') return <TextField {...box} autoComplete="off" />
  if (field.name !== 'at' || field.dimension !== 'text') return <QuantityField {...box} />
  return (
    <div className="sums-now">
      <TextField {...box} autoComplete="off" />
      <Button onClick={() => change(momentHere(new Date()))}>{labelOf('sumScreen.now')}</Button>
    </div>
  )
}

function choicesOf({ name, default: usual }: SumField, value: string) {
  if (name === 'solvent')
    return { choices: solvents.map((solvent) => ({ value: solvent.name, label: solvent.name })), value }
  const choices = ['least', 'most'].map((sense) => ({ value: sense, label: labelOf(`sumChoice.${sense}`) }))
  return { choices, value: value === '' ? (usual ?? '') : value }
}

/** The sentence names the box as it is lettered here. */
const problemText = (
  { code, data }: WorkedSum['faults'][string],
  { words, name }: { readonly words: Words; readonly name: string },
): string => words.sentence(code, { ...data, field: name })

const twoDigits = (count: number): string => String(count).padStart(2, '0')

/** A moment as the clock on this device shows it, with its offset from UTC. */
export function momentHere(now: Date): string {
  const offset = -now.getTimezoneOffset()
  const size = Math.abs(offset)
  const date = [now.getFullYear(), twoDigits(now.getMonth() + 1), twoDigits(now.getDate())].join('-')
  const time = `${twoDigits(now.getHours())}:${twoDigits(now.getMinutes())}`
  return `${date}T${time}${offset < 0 ? '-' : '+'}${twoDigits(Math.floor(size / 60))}:${twoDigits(size % 60)}`
}
