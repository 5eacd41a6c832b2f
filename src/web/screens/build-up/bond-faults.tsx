/** What does not hold in a build-up and what puts it right, the worst first; what only wants minding below. */
import { noteText } from '#papers'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { PartBlock } from '../../parts/index.ts'

export type BondFaultsProps = { readonly view: JobView; readonly zone: string }

const breaking = new Set(['fault', 'missing'])

export const BondFaults = ({ view, zone }: BondFaultsProps) => {
  const { plan } = view
  const found = plan?.bonds.stacks.find(({ zones }) => zones.includes(zone))
  if (!plan || !found) return null
  const faults = found.notes.filter(({ severity }) => breaking.has(severity))
  const minded = found.notes.filter(({ severity }) => !breaking.has(severity))
  return (
    <>
      <PartBlock title={labelOf('buildUp.faults')}>
        {faults.length === 0 ? <p>{labelOf('buildUp.holds')}</p> : <List notes={faults} view={view} />}
      </PartBlock>
      {minded.length === 0 ? null : (
        <PartBlock title={labelOf('buildUp.minded')}>
          <List notes={minded} view={view} />
        </PartBlock>
      )}
    </>
  )
}

type Note = NonNullable<JobView['plan']>['bonds']['notes'][number]

const List = ({ notes, view }: { readonly notes: readonly Note[]; readonly view: JobView }) => (
  <ul className="bond-faults">
    {notes.map((note) => {
      const text = view.plan ? noteText(view.plan, note, view.words) : ''
      return (
        <li key={text}>
          {text}
          {note.source === undefined ? null : (
            <span className="shortcuts-source">
              {' '}
              {view.words.sentence('shortcut.source', { source: note.source })}
            </span>
          )}
        </li>
      )
    })}
  </ul>
)
