/** What does not hold in a build-up and what puts it right, the worst first; what only wants minding below. */
import { noteText } from '#papers'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { PartBlock } from '../../parts/index.ts'
import './bond-faults.css'

/** `zones`: those that are drawn as one build-up; their grounds may differ. */
export type BondFaultsProps = { readonly view: JobView; readonly zones: readonly string[] }

const breaking = new Set(['fault', 'missing'])

export const BondFaults = ({ view, zones }: BondFaultsProps) => {
  const { plan } = view
  const stacks = plan?.bonds.stacks.filter((stack) => stack.zones.some((zone) => zones.includes(zone))) ?? []
  if (!plan || stacks.length === 0) return null
  // The notes of the whole plan name every zone that has the fault, so each stands once.
  const own = new Set(stacks.flatMap(({ notes }) => notes.map(aboutWhat)))
  const found = plan.bonds.notes.filter((note) => own.has(aboutWhat(note)))
  const faults = found.filter(({ severity }) => breaking.has(severity))
  const minded = found.filter(({ severity }) => !breaking.has(severity))
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

/** The note without the zones it names. */
const aboutWhat = ({ code, data: { zones: _zones, more: _more, ...rest } }: Note): string =>
  JSON.stringify([code, rest])

const List = ({ notes, view }: { readonly notes: readonly Note[]; readonly view: JobView }) => (
  <ul className="bond-faults">
    {notes.map((note) => {
      const text = view.plan ? noteText(view.plan, note, view.words) : ''
      return (
        <li key={text}>
          {text}
          {note.source === undefined ? null : (
            <span className="bond-faults-source">
              {view.words.sentence('shortcut.source', { source: note.source })}
            </span>
          )}
        </li>
      )
    })}
  </ul>
)
