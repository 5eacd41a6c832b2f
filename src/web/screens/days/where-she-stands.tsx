/** Where she stands: what is over her, which way she points, light after dark, and the shed with its heater, doors and floor. */
import type { Note } from '#core/note'
import { lampsOver } from '#plan'
import { labelOf } from '#words'
import { Cells, Fold } from '../../fields/cells.tsx'
import { cellOf, type JobView } from '../../job/job-view.ts'
import { CautionPanel, Part, PartBlock, YesField } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'

const place = { part: 'work', section: 'place' } as const
const shed = { part: 'work', section: 'shed' } as const

const ofShelter = /^climate\./
const skyIsOver = ['open', 'cover', 'open-sided shed']

export const WhereSheStands = ({ view, plan }: { readonly view: JobView; readonly plan: ShownPlan }) => {
  const shelter = cellOf(view, { ...place, key: 'shelter' })
  const notes = plan.conditions.notes.filter(({ code }) => ofShelter.test(code))
  return (
    <Part title={labelOf('daysScreen.whereSheStands')}>
      <Cells view={view} place={place} keys={['shelter']} helped />
      {notes.length > 0 ? (
        <div className="where-notes">
          {notes.map((note) => (
            <Said key={note.code} view={view} note={note} />
          ))}
        </div>
      ) : null}
      {skyIsOver.includes(shelter) ? null : <ShedFold view={view} heated={shelter === 'heated shed'} />}
      <Fold title={labelOf('daysScreen.placeAndLight')}>
        <div className="where-rows">
          <Cells view={view} place={place} keys={['bowBearing', 'latitude', 'longitude']} helped />
          {shelter === 'open' ? <Cells view={view} place={place} keys={['eveningStop']} helped /> : null}
          <Lamps view={view} />
        </div>
      </Fold>
    </Part>
  )
}

/** What can hurt or spoil stands in a panel, what is taken for granted in plain ink. */
const Said = ({ view, note }: { readonly view: JobView; readonly note: Note }) => {
  const { code, severity, data } = note
  const text = view.words.sentence(code, data)
  if (severity === 'danger' || severity === 'notice')
    return <CautionPanel signal={severity}>{text}</CautionPanel>
  return <p className="give-weather-say">{text}</p>
}

const ShedFold = ({ view, heated }: { readonly view: JobView; readonly heated: boolean }) => {
  const flame = cellOf(view, { ...place, key: 'heater' }) === 'unvented flame'
  return (
    <Fold title={labelOf('daysScreen.shedIs')}>
      <PartBlock title={labelOf('daysScreen.shedSize')} level={3}>
        <Cells view={view} place={shed} keys={['length', 'width', 'height', 'walls']} helped />
      </PartBlock>
      {heated ? (
        <PartBlock title={labelOf('daysScreen.shedHeat')} level={3}>
          <div className="where-rows">
            <Cells view={view} place={place} keys={['heater']} helped />
            <Cells
              view={view}
              place={shed}
              keys={[
                ...(flame ? ['fuel'] : []),
                'heatTo',
                'heatFrom',
                'heatUntil',
                'heatToNight',
                'heaterPower',
              ]}
              helped
            />
          </div>
        </PartBlock>
      ) : null}
      <PartBlock title={labelOf('daysScreen.shedDoor')} level={3}>
        <Cells view={view} place={shed} keys={['doorFrom', 'doorUntil', 'floorWater', 'floorAt']} helped />
      </PartBlock>
    </Fold>
  )
}

/** Left out, it is what the shelter says: so the box shows what the hours are judged by. */
const Lamps = ({ view }: { readonly view: JobView }) => {
  const at = { ...place, key: 'lamps' }
  const told = cellOf(view, at)
  const shelter = cellOf(view, { ...place, key: 'shelter' })
  return (
    <YesField
      label={labelOf('cell.place.lamps')}
      help={labelOf('cellHelp.place.lamps')}
      value={lampsOver(shelter, told === '' ? undefined : told === 'yes')}
      onChange={(yes) => view.edits.set(at, yes ? 'yes' : 'no')}
      disabled={view.readOnly}
    />
  )
}
