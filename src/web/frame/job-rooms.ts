/** The rooms of a job as marks on the stick, with what waits in each. */
import { labelOf } from '#words'
import type { JobView } from '../job/job-view.ts'
import type { StickRoom } from '../parts/index.ts'
import { rooms } from '../screens/rooms.ts'

/** The four a phone always shows; the rest stand under More. */
export const phoneRooms: readonly string[] = ['today', 'days', 'build-up', 'log']

export type RoomsHere = {
  readonly view: JobView | undefined
  readonly here: string
  readonly href: (room: string) => string
}

export const jobRooms = ({ view, here, href }: RoomsHere): readonly StickRoom[] => [
  { id: 'jobs', href: '/', label: labelOf('room.jobs') },
  ...rooms.map(({ id }) => ({
    id,
    href: href(id),
    label: labelOf(`room.${id}`),
    count: view && countOf(view, id),
    here: id === here,
  })),
  { id: 'sums', href: '/sums', label: labelOf('room.sums'), foot: true },
]

/** A word or a count, only where it says something; undefined elsewhere. */
function countOf({ plan, words, problems, log }: JobView, room: string): string | undefined {
  if (!plan) return undefined
  const say = (code: string, count: number): string | undefined =>
    count > 0 ? words.sentence(code, { count }) : undefined
  switch (room) {
    case 'boat':
      return say('frame.countZones', plan.surfaces.zones.length)
    case 'survey':
      return say('frame.countFindings', plan.repairs.repairs.length)
    case 'build-up':
      return say(
        'frame.countWrong',
        problems.filter(({ pointer }) => /^\/work\/(layers|sheets)\//.test(pointer)).length,
      )
    case 'days':
      return say('frame.countDays', plan.days.days.length)
    case 'stores':
      return say('frame.countShort', plan.stores.items.filter(({ shortM3 }) => shortM3 > 0).length)
    case 'log':
      return say('frame.countUnsent', log.filter(({ sent }) => !sent).length)
    default:
      return undefined
  }
}
