/** One screen: a frame with grid letters after ISO 5457, the opening sentence, its parts, the title block at the foot. */
import type { ReactNode } from 'react'
import './sheet.css'

export type SheetProps = {
  /** The opening sentence, with hours or litres in it. */
  readonly title: ReactNode
  /** Second sentence. */
  readonly say?: ReactNode
  /** Buttons at the right of the sentence; one of them is `next`. */
  readonly action?: ReactNode
  /** Over the frame on a phone: what day, which boat. */
  readonly head?: SheetHead
  /** A `TitleBlock`; a phone shows it under More, so give it to the stick too. */
  readonly block?: ReactNode
  readonly children?: ReactNode
}

export type SheetHead = { readonly title: ReactNode; readonly aside?: ReactNode }

const columns = [1, 2, 3, 4, 5, 6, 7, 8]
/** The standard leaves out I and O. */
const rows = 'ABCDEFGHJKLMNPQRSTUVWXYZ'.split('')

export const Sheet = ({ title, say, action, head, block, children }: SheetProps) => (
  <main className="sheet">
    {head ? (
      <div className="sheet-head">
        <span className="sheet-head-title">{head.title}</span>
        <span className="sheet-head-aside">{head.aside}</span>
      </div>
    ) : null}
    <Grid />
    <div className="sheet-frame">
      <header className="sheet-opening">
        <div className="sheet-sentences">
          <h1 className="sheet-title">{title}</h1>
          {say ? <p className="sheet-say">{say}</p> : null}
        </div>
        {action ? <div className="sheet-action">{action}</div> : null}
      </header>
      <div className="sheet-parts">{children}</div>
      {block ? <div className="sheet-block">{block}</div> : null}
    </div>
  </main>
)

/** So that "look at C4" works by telephone; nobody reads it out. */
const Grid = () => (
  <>
    <div className="sheet-columns" aria-hidden="true">
      {columns.map((column) => (
        <span key={column}>{column}</span>
      ))}
    </div>
    <div className="sheet-rows" aria-hidden="true">
      {rows.map((row) => (
        <span key={row}>{row}</span>
      ))}
    </div>
  </>
)
