/** The title block (ISO 7200): which boat, sheet and change this is, in cells of a label and a value. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'
import './title-block.css'

export type TitleCell = {
  readonly label: string
  readonly value: ReactNode
  /** Where the value leads, such as the list of what is assumed. */
  readonly href?: string
}

export const TitleBlock = ({ cells }: { readonly cells: readonly TitleCell[] }) => (
  <section className="title-block" aria-label={labelOf('screenPart.titleBlock')}>
    <dl className="title-block-cells">
      {cells.map(({ label, value, href }) => (
        <div className="title-block-cell" key={label}>
          <dt className="title-block-label">{label}</dt>
          <dd className="title-block-value">{href === undefined ? value : <a href={href}>{value}</a>}</dd>
        </div>
      ))}
    </dl>
  </section>
)
