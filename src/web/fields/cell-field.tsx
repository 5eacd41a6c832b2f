/** A cell of the job as the field that fits its rule: what a person may set stands in a box. */
import type { ReactNode } from 'react'
import type { Field } from '#job'
import { genericSheetNames, labelOf, problemText } from '#words'
import { type CellPlace, cellOf, type JobView, pointerOf, problemAt } from '../job/job-view.ts'
import { ChoiceField, DateField, TextField, TimeField, YesField } from '../parts/index.ts'
import { useAskedCell } from './asked-cell.ts'
import './fields.css'
import { fieldOf } from './field-of.ts'
import { itemsOf, nameOf } from './items.ts'
import { MeasureField } from './measure-field.tsx'
import { packName } from './pack-name.ts'
import { RefsField } from './refs-field.tsx'

export type CellFieldProps = {
  readonly view: JobView
  readonly place: CellPlace
  /** Says below the box what belongs in it. */
  readonly helped?: boolean | undefined
  /** Said after that. */
  readonly hint?: string | undefined
  /** Where the label of the key does not fit. */
  readonly label?: ReactNode
}

export const CellField = (props: CellFieldProps) => (
  <div ref={useAskedCell(props.place)} className="cell">
    <Box {...props} />
  </div>
)

const Box = ({ view, place, helped, hint, label }: CellFieldProps) => {
  const field = fieldOf(place)
  const problem = problemAt(view, place)
  const value = cellOf(view, place)
  const commit = (text: string): void => view.edits.set(place, text.trim() === '' ? undefined : text.trim())
  const frame = {
    label: label ?? labelOf(`cell.${place.section}.${place.key}`),
    problem: problem && problemText(view.words, problem),
    help: helped ? helpOf(place, hint) : undefined,
  }
  const box = { ...frame, value, onCommit: commit, readOnly: view.readOnly }
  switch (field.kind) {
    case 'quantity':
      return (
        <MeasureField
          {...box}
          field={field}
          system={view.system}
          say={(fault) => problemText(view.words, { ...fault, pointer: pointerOf(place) })}
        />
      )
    case 'choice':
      return (
        <ChoiceField
          {...frame}
          value={value}
          onChange={commit}
          disabled={view.readOnly}
          choices={field.choices.map((choice) => ({ value: choice, label: choiceLabel(choice) }))}
        />
      )
    case 'date':
      return <DateField {...box} />
    case 'timeOfDay':
      return <TimeField {...box} />
    case 'yesno':
      return (
        <YesField
          {...frame}
          value={value === 'yes' || value === 'true'}
          onChange={(yes) => commit(yes ? 'yes' : 'no')}
          disabled={view.readOnly}
        />
      )
    case 'ref':
      return (
        <ChoiceField
          {...frame}
          as="list"
          value={value}
          onChange={commit}
          disabled={view.readOnly}
          choices={targets(view, place, field)}
        />
      )
    case 'refs':
      return <RefsField {...box} choices={targets(view, place, field)} />
    default:
      return <TextField {...box} />
  }
}

const helpOf = ({ section, key }: CellPlace, hint: string | undefined): string =>
  [labelOf(`cellHelp.${section}.${key}`), hint].filter((text) => text !== undefined).join(' ')

/** `two-part polyurethane` is `Two-part polyurethane`. */
export const choiceLabel = (choice: string): string => choice.charAt(0).toUpperCase() + choice.slice(1)

const generics = [...genericSheetNames].map(([value, label]) => ({ value, label }))

function targets(view: JobView, { part }: CellPlace, { to }: Extract<Field, { readonly to: string }>) {
  if (to === 'catalogue') return generics
  if (to === 'consumables') return consumablesOf(view)
  const own = itemsOf(view, { part, section: to })
  const found = own.length > 0 ? own : itemsOf(view, { part: 'work', section: to })
  return found.map((item) => ({
    value: item.id,
    label: (to === 'packs' && packName(view, item.cells)) || nameOf(item),
  }))
}

/** What the work eats up; the price of anything else would change nothing. */
function consumablesOf({ plan }: JobView) {
  const ids = new Set(plan?.stores.consumables.map(({ id }) => id))
  return [...ids].map((id) => ({ value: id, label: labelOf(`consumable.${id}`) }))
}
