/** What was measured on the hull itself: girths off a tape, and stations with their points. */
import { labelOf } from '#words'
import { choiceLabel } from '../../fields/cell-field.tsx'
import { Collection } from '../../fields/collection.tsx'
import { itemsOf, nameOf } from '../../fields/items.ts'
import type { JobView } from '../../job/job-view.ts'
import { Part, PartBlock } from '../../parts/index.ts'

const girths = { part: 'work', section: 'girths' } as const
const stations = { part: 'work', section: 'stations' } as const
const points = { part: 'work', section: 'points' } as const

export const MeasuredPart = ({ view }: { readonly view: JobView }) => {
  const { words } = view
  const places = itemsOf(view, stations)
  return (
    <Part title={labelOf('boat.measured')}>
      <PartBlock title={labelOf('boat.girths')} level={3}>
        <p>{words.sentence('boat.girthsHelp')}</p>
        <Collection
          view={view}
          place={girths}
          keys={['fromStern', 'side', 'sheerToWater', 'waterToChine', 'chineToKeel']}
          fresh={{ fromStern: '' }}
          add={labelOf('boat.addGirth')}
          name={({ cells }) => `${labelOf('boat.girthAt')} ${String(cells.fromStern || '?')}`}
          aside={({ cells }) => choiceLabel(String(cells.side ?? 'both'))}
        />
      </PartBlock>
      <PartBlock title={labelOf('boat.stations')} level={3}>
        <p>{words.sentence('boat.stationsHelp', { count: places.length })}</p>
        <Collection
          view={view}
          place={stations}
          keys={['name', 'x']}
          fresh={{ name: String(places.length), x: '' }}
          add={labelOf('boat.addStation')}
          name={(station) => `${labelOf('cell.stations.name')} ${nameOf(station)}`}
          aside={(station) =>
            words.sentence('boat.stationPoints', {
              at: String(station.cells.x || '?'),
              count: pointsOf(view, station.id).length,
            })
          }
          within={(station) => (
            <Collection
              view={view}
              place={points}
              only={({ cells }) => cells.station === station.id}
              keys={['halfBreadth', 'height', 'knuckle']}
              fresh={{ station: station.id, halfBreadth: '', height: '' }}
              add={labelOf('boat.addPoint')}
              name={({ cells }) => `${String(cells.halfBreadth || '?')} × ${String(cells.height || '?')}`}
              aside={({ cells }) => String(cells.knuckle ?? '')}
            />
          )}
        />
      </PartBlock>
    </Part>
  )
}

const pointsOf = (view: JobView, station: string) =>
  itemsOf(view, points).filter(({ cells }) => cells.station === station)
