/** Somebody's own table: its first rows column by column, and a person says what each is and in which unit. */
import { useState } from 'react'
import { type DateOrder, type TableLook, tableChoices } from '#intake'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Button, ChoiceField, Dialog, Progress, TextField } from '../../parts/index.ts'
import type { FileProblem } from '../../worker/read-job-files.ts'
import './table-dialog.css'
import { firstSaid, type TableSaid, toldApart, unitsFor, withTarget, withUnit } from './table-said.ts'

export type TableDialogProps = {
  readonly view: JobView
  readonly file: string
  readonly table: TableLook
  readonly problems: readonly FileProblem[]
  readonly reading: boolean
  readonly onRead: (said: TableSaid) => void
  readonly onClose: () => void
}

/** Lines that are shown of rows that do not read. */
const mostLines = 12

/** Codes that belong to the fields for clock and dates, and are said there. */
const ofZone = ['intake.zoneAsked', 'intake.zoneUnknown']
const ofDates = ['intake.datesAsked']

export const TableDialog = (props: TableDialogProps) => {
  const { view, file, table, problems, reading, onRead, onClose } = props
  const { words } = view
  const [said, setSaid] = useState(() => firstSaid({ table, zone: view.timeZone }))
  const wrong = (codes: readonly string[]): string | undefined => {
    const found = problems.find(({ code }) => codes.includes(code))
    return found && words.sentence(found.code, found.data)
  }
  return (
    <Dialog
      wide
      title={words.sentence('daysscreen.tableTitle', { file })}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{labelOf('daysScreen.cancel')}</Button>
          <Button next disabled={reading} onClick={() => onRead(said)}>
            {labelOf('daysScreen.readTable')}
          </Button>
        </>
      }
    >
      <div className="table-dialog">
        <p>{words.sentence('daysscreen.tableSay')}</p>
        <Rest {...props} />
        {said.columns.map((_, at) => (
          <Column key={String(at)} {...{ view, table, problems, said, at }} onSaid={setSaid} />
        ))}
        {table.zoned ? null : (
          <TextField
            label={labelOf('daysScreen.tableZone')}
            help={labelOf('daysScreen.tableZoneHelp')}
            value={said.zone}
            onCommit={(zone) => setSaid({ ...said, zone })}
            problem={wrong(ofZone)}
          />
        )}
        {table.dates === undefined ? (
          <ChoiceField
            label={labelOf('daysScreen.tableDates')}
            as="list"
            choices={orders.map((value) => ({ value, label: labelOf(`dateOrder.${value}`) }))}
            value={said.dates}
            none={labelOf('daysScreen.tableUnsaid')}
            onChange={(dates) => setSaid({ ...said, dates })}
            problem={wrong(ofDates)}
          />
        ) : null}
        {reading ? <Progress label={labelOf('import.reading')} /> : null}
      </div>
    </Dialog>
  )
}

const orders: readonly DateOrder[] = ['dmy', 'mdy', 'ymd']

/** What is wrong with the table as a whole or with a row of it; the rest stands at its field. */
const Rest = ({ view: { words }, problems }: TableDialogProps) => {
  const rest = problems.filter(
    ({ code, line, column }) =>
      ![...ofZone, ...ofDates].includes(code) && (line !== undefined || column === undefined),
  )
  if (rest.length === 0) return null
  return (
    <div role="alert">
      <ul className="table-dialog-problems">
        {rest.slice(0, mostLines).map((problem) => (
          <li key={`${problem.line} ${problem.column} ${problem.code} ${JSON.stringify(problem.data)}`}>
            {words.sentence('daysscreen.tableRow', {
              row: problem.line === undefined ? '' : String(problem.line),
              text: words.sentence(problem.code, problem.data),
            })}
          </li>
        ))}
      </ul>
    </div>
  )
}

type ColumnProps = Pick<TableDialogProps, 'view' | 'table' | 'problems'> & {
  readonly said: TableSaid
  readonly at: number
  readonly onSaid: (said: TableSaid) => void
}

const Column = ({ view: { words }, table, problems, said, at, onSaid }: ColumnProps) => {
  const { name, to, unit } = said.columns[at]!
  const units = unitsFor(to)
  const columnName = (): string => {
    const apart = toldApart(said, table, at)
    if (apart) return words.sentence('daysscreen.tableColumnOf', { name, ...apart })
    return name === '' ? words.sentence('daysscreen.tableColumn', { at: at + 1 }) : name
  }
  const own = problems.find(({ line, column }) => line === undefined && column === at + 1)
  // A unit that the file writes its own way stays there to be kept.
  const choices = unit === '' || units.includes(unit) ? units : [...units, unit]
  return (
    <fieldset className="table-dialog-column">
      <legend>{columnName()}</legend>
      <ol className="table-dialog-rows" aria-label={labelOf('daysScreen.firstRows')}>
        {table.samples.map((row, index) => (
          <li key={String(index)}>{row[at]?.trim() || '–'}</li>
        ))}
      </ol>
      <ChoiceField
        label={labelOf('daysScreen.columnIs')}
        as="list"
        choices={tableChoices.map(({ to: value }) => ({ value, label: labelOf(`tableColumn.${value}`) }))}
        value={to}
        onChange={(value) => onSaid(withTarget(said, at, value))}
      />
      {choices.length === 0 ? null : (
        <ChoiceField
          label={labelOf('daysScreen.columnUnit')}
          as="list"
          choices={choices.map((value) => ({
            value,
            label: value === '0..1' ? labelOf('daysScreen.unitShare') : value,
          }))}
          value={unit}
          none={labelOf('daysScreen.tableUnsaid')}
          onChange={(value) => onSaid(withUnit(said, at, value))}
          problem={own && words.sentence(own.code, own.data)}
        />
      )}
    </fieldset>
  )
}
