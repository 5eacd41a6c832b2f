/** Who works when: people, shifts and days off, to change where their effect is seen. */
import { labelOf } from '#words'
import { Fold } from '../../fields/cells.tsx'
import { Collection } from '../../fields/collection.tsx'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { Part, PartBlock } from '../../parts/index.ts'
import { personName } from '../today/who-of.ts'

const people = { part: 'work', section: 'people' } as const
const shifts = { part: 'work', section: 'shifts' } as const
const closures = { part: 'work', section: 'closures' } as const

export const Crew = ({ view }: { readonly view: JobView }) => {
  const today = localDate(Math.floor(view.nowMs / 60_000), view.timeZone)
  const first = Object.keys(view.raw.work.people ?? {})[0] ?? ''
  const text = (cell: unknown): string => (typeof cell === 'string' ? cell : '')
  return (
    <Part label={labelOf('daysScreen.people')}>
      <Fold title={labelOf('daysScreen.people')}>
        <PartBlock title={labelOf('daysScreen.closures')} level={3}>
          <Collection
            view={view}
            place={closures}
            keys={['from', 'until', 'person', 'why']}
            fresh={{ from: today, until: today }}
            add={labelOf('daysScreen.addClosure')}
            name={({ cells }) =>
              text(cells.why) ||
              (text(cells.person) === ''
                ? labelOf('daysScreen.everyone')
                : personName(view, text(cells.person)))
            }
            aside={({ cells }) =>
              view.words.sentence('daysscreen.weeks', {
                fromDate: text(cells.from),
                toDate: text(cells.until),
              })
            }
          />
        </PartBlock>
        <PartBlock title={labelOf('daysScreen.shifts')} level={3}>
          <Collection
            view={view}
            place={shifts}
            keys={['person', 'days', 'from', 'until']}
            fresh={{ person: first, days: 'mon-fri', from: '07:30', until: '15:30' }}
            add={labelOf('daysScreen.addShift')}
            name={({ cells }) => personName(view, text(cells.person))}
            aside={({ cells }) => [cells.days, cells.from, cells.until].map(text).join(' ')}
          />
        </PartBlock>
        <PartBlock title={labelOf('daysScreen.crew')} level={3}>
          <Collection
            view={view}
            place={people}
            keys={['name', 'role']}
            fresh={{ name: labelOf('daysScreen.newPerson') }}
            add={labelOf('daysScreen.addPerson')}
            name={({ cells }) => text(cells.name) || labelOf('daysScreen.newPerson')}
          />
        </PartBlock>
      </Fold>
    </Part>
  )
}
