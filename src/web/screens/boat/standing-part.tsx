/** How the boat stands ashore: the marks whose heights were measured, and what they say together. */
import { standingText } from '#papers'
import { labelOf } from '#words'
import { Cells, Fold } from '../../fields/cells.tsx'
import { Collection } from '../../fields/collection.tsx'
import { itemsOf, nameOf } from '../../fields/items.ts'
import type { JobView } from '../../job/job-view.ts'
import { notesOf } from '../../job/notes-of.ts'
import { Ledger, Part } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import { StandingDrawing } from './standing-drawing.tsx'

const stance = { part: 'work', section: 'stance' } as const
const levels = { part: 'work', section: 'levels' } as const

/** Notes on how she stands stand here, not beside the zones. */
export const standingNotes = /^boat\.(level|laser|stands|waterlineFrom)/

export const StandingPart = ({ view }: { readonly view: JobView }) => {
  const { plan, words } = view
  const fit = plan?.standing.fit
  return (
    <Part
      title={labelOf('heading.standing')}
      notes={plan ? sheetNotes(view, notesOf(plan, standingNotes)) : undefined}
    >
      {fit ? (
        <>
          <p>{standingText(fit, words)}</p>
          <StandingDrawing fit={fit} words={words} />
          <Residuals view={view} fit={fit} />
        </>
      ) : (
        <p>{words.sentence('boat.standingUnknown')}</p>
      )}
      <Cells view={view} place={stance} keys={['date', 'waterline', 'laserHeight']} helped />
      <Fold title={labelOf('boat.levels')}>
        <Collection
          view={view}
          place={levels}
          keys={['name', 'fromStern', 'offCentre', 'height', 'overFloor', 'belowLaser']}
          fresh={{ name: labelOf('boat.newLevel'), fromStern: '0 m', offCentre: '0 m' }}
          add={labelOf('boat.addLevel')}
          aside={({ cells }) => String(cells.overFloor ?? cells.belowLaser ?? '')}
        />
      </Fold>
    </Part>
  )
}

type Fit = NonNullable<ShownPlan['standing']['fit']>

const Residuals = ({ view, fit }: { readonly view: JobView; readonly fit: Fit }) => {
  const items = itemsOf(view, levels)
  return (
    <Ledger
      caption={labelOf('heading.standing')}
      columns={[
        { key: 'mark', label: labelOf('column.mark'), phone: 'first' },
        { key: 'measured', label: labelOf('column.measured'), align: 'right', phone: 'second' },
        { key: 'residual', label: labelOf('column.residual'), align: 'right', phone: 'side' },
      ]}
      rows={fit.marks.map(({ mark, residualM }) => {
        const item = items.find(({ id }) => id === mark)
        return {
          id: mark,
          cells: {
            mark: item ? nameOf(item) : mark,
            measured: String(item?.cells.overFloor ?? item?.cells.belowLaser ?? ''),
            residual: view.words.figure('residualByTapeM', residualM),
          },
        }
      })}
    />
  )
}
