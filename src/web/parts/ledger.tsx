/** A table: figures right, text left, heads ruled in ink. On a phone each row becomes two lines; nothing scrolls sideways. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'
import './ledger.css'
import { classes } from './classes.ts'

export type LedgerColumn = {
  readonly key: string
  readonly label: string
  /** Figures stand right. */
  readonly align?: 'left' | 'right' | undefined
  /** Where it stands on a phone: first line left, first line right, second line (usual), or nowhere. */
  readonly phone?: 'first' | 'side' | 'second' | 'hide' | undefined
  /** On a phone the second line says the column's name too. */
  readonly named?: boolean | undefined
  /** A share of the width, such as "40%". */
  readonly width?: string | undefined
}

export type LedgerRow = {
  readonly id: string
  readonly cells: Readonly<Record<string, ReactNode>>
  /** Where the row leads: its first cell becomes a link over the whole row. */
  readonly href?: string | undefined
  /** What the row does: its first cell becomes a button over the whole row. */
  readonly onSelect?: (() => void) | undefined
  readonly selected?: boolean | undefined
  /** A sum: ruled off in ink and strong. */
  readonly total?: boolean | undefined
}

export type LedgerProps = {
  /** What it lists, for screen readers; shown where `captionShown`. */
  readonly caption: string
  readonly captionShown?: boolean | undefined
  readonly columns: readonly LedgerColumn[]
  readonly rows: readonly LedgerRow[]
  /** Without the row of heads, as a list. */
  readonly bare?: boolean | undefined
}

// Said again because a phone lays rows out as lines, which takes their roles away in some browsers.
const roles = {
  table: { role: 'table' },
  rowgroup: { role: 'rowgroup' },
  row: { role: 'row' },
  columnheader: { role: 'columnheader' },
  cell: { role: 'cell' },
} as const

export const Ledger = ({ caption, captionShown, columns, rows, bare }: LedgerProps) => (
  <table className={classes('ledger', bare && 'ledger-bare')} {...roles.table}>
    <caption className={captionShown ? 'ledger-caption' : 'unseen'}>{caption}</caption>
    <thead className={bare ? 'unseen' : 'ledger-heads'} {...roles.rowgroup}>
      <tr {...roles.row}>
        {columns.map(({ key, label, align, width }) => (
          <th
            key={key}
            scope="col"
            {...roles.columnheader}
            className={classes(align === 'right' && 'ledger-right')}
            style={{ width }}
          >
            {label}
          </th>
        ))}
      </tr>
    </thead>
    <tbody {...roles.rowgroup}>
      {rows.map((row) => (
        <Row key={row.id} row={row} columns={columns} />
      ))}
    </tbody>
  </table>
)

type RowProps = { readonly row: LedgerRow; readonly columns: readonly LedgerColumn[] }

const Row = ({ row, columns }: RowProps) => (
  <tr
    {...roles.row}
    className={classes(
      'ledger-row',
      row.selected && 'ledger-selected',
      row.total && 'ledger-total',
      (row.href !== undefined || row.onSelect !== undefined) && 'ledger-live',
    )}
  >
    {columns.map((column, index) => (
      <td key={column.key} {...roles.cell} className={cellClass(column, index)}>
        {column.named && isSaid(row.cells[column.key]) ? (
          <span className="ledger-name" aria-hidden="true">
            {column.label}{' '}
          </span>
        ) : null}
        {index === 0 ? <Lead row={row}>{row.cells[column.key]}</Lead> : row.cells[column.key]}
      </td>
    ))}
  </tr>
)

const isSaid = (cell: ReactNode): boolean => cell !== undefined && cell !== null && cell !== ''

const cellClass = ({ align, phone }: LedgerColumn, index: number): string =>
  classes(
    'ledger-cell',
    align === 'right' && 'ledger-right',
    `ledger-phone-${phone ?? (index === 0 ? 'first' : index === 1 ? 'side' : 'second')}`,
  )

const Lead = ({ row, children }: { readonly row: LedgerRow; readonly children: ReactNode }) => {
  const { href, onSelect, selected } = row
  const chosen = selected ? <span className="unseen">, {labelOf('screenPart.selected')}</span> : null
  if (href !== undefined)
    return (
      <a className="ledger-lead" href={href}>
        {children}
        {chosen}
      </a>
    )
  if (onSelect !== undefined)
    return (
      <button className="ledger-lead" type="button" aria-pressed={selected ?? false} onClick={onSelect}>
        {children}
      </button>
    )
  return (
    <>
      {children}
      {chosen}
    </>
  )
}
