/** What does not hold in a build-up and what puts it right, the worst first; what only wants minding below. */
import { noteText } from '#papers'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { NoteFlag, PartBlock } from '../../parts/index.ts'
import type { Found } from './bond-found.ts'
import './bond-faults.css'

export type BondFaultsProps = { readonly view: JobView; readonly found: readonly Found[] }

export const BondFaults = ({ view, found }: BondFaultsProps) => {
  const faults = found.filter(({ breaks }) => breaks)
  const minded = found.filter(({ breaks }) => !breaks)
  return (
    <>
      <PartBlock title={labelOf('buildUp.faults')}>
        {faults.length === 0 ? <p>{labelOf('buildUp.holds')}</p> : <List found={faults} view={view} />}
      </PartBlock>
      {minded.length === 0 ? null : (
        <PartBlock title={labelOf('buildUp.minded')}>
          <List found={minded} view={view} />
        </PartBlock>
      )}
    </>
  )
}

const List = ({ found, view }: BondFaultsProps) => (
  <ul className="bond-faults">
    {found.map(({ number, note, breaks }) => (
      <li key={number}>
        {breaks ? <b className="bond-faults-mark">{number}</b> : <NoteFlag kind="note" mark={number} />}
        <div>
          {view.plan ? noteText(view.plan, note, view.words) : ''}
          {note.source === undefined ? null : (
            <span className="bond-faults-source">
              {view.words.sentence('shortcut.source', { source: note.source })}
            </span>
          )}
        </div>
      </li>
    ))}
  </ul>
)
