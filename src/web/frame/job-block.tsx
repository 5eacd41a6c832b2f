/** The title block of a job's sheets: boat, sheet, change, weather, how sure a number is, and what is open. */
import { labelOf } from '#words'
import { cellOf, type JobView } from '../job/job-view.ts'
import { localDate } from '../job/local-date.ts'
import { shortName } from '../job/short-name.ts'
import { FigureKey, type SheetHead, type TitleCell } from '../parts/index.ts'
import { rooms } from '../screens/rooms.ts'

export type BlockPlace = { readonly room: string; readonly href: (room: string) => string }

const job = { part: 'work', section: 'job' } as const

export const boatName = (view: Pick<JobView, 'raw'>): string =>
  shortName(cellOf(view, { ...job, key: 'boatName' }) || cellOf(view, { ...job, key: 'name' }))

export function jobCells(view: JobView, { room, href }: BlockPlace): readonly TitleCell[] {
  const { words, plan } = view
  const length = plan?.surfaces.hull?.particulars.lengthOverall
  const number = rooms.findIndex(({ id }) => id === room) + 1
  return [
    {
      label: labelOf('frame.boat'),
      value: (
        <>
          <b>{boatName(view)}</b>
          {length === undefined ? null : (
            <>
              , <span className="job-block-figure">{words.figure('lengthM', length)}</span>
            </>
          )}
        </>
      ),
    },
    {
      label: labelOf('frame.sheet'),
      value: words.sentence('frame.sheetOf', { number, name: labelOf(`room.${room}`), of: rooms.length }),
    },
    { label: labelOf('frame.change'), value: changeText(view) },
    { label: labelOf('frame.units'), value: labelOf(`frame.system.${view.system}`) },
    { label: labelOf('frame.weather'), value: weatherText(view) },
    { label: labelOf('frame.sure'), value: <FigureKey /> },
    { label: labelOf('frame.open'), value: openText(view), href: href('open') },
  ]
}

function changeText({ change, words }: JobView): string {
  const { number, atMs } = change
  return atMs === undefined
    ? words.sentence('frame.changeNumber', { number })
    : words.sentence('frame.changeAt', { number, changedAtMs: atMs })
}

function weatherText({ plan, words, timeZone }: JobView): string {
  const { firstMinute = 0, lastMinute = 0, horizon } = plan?.conditions ?? {}
  if (lastMinute <= firstMinute) return labelOf('frame.noWeather')
  const [fromDate, toDate] = [firstMinute, lastMinute].map((minute) => localDate(minute, timeZone))
  if (!horizon) return words.sentence('frame.weatherFromTo', { fromDate, toDate })
  const { forecastUntilMinute } = horizon
  if (forecastUntilMinute <= firstMinute) return labelOf('frame.typicalYear')
  const untilDate = localDate(forecastUntilMinute, timeZone)
  return words.sentence('frame.weatherThen', { fromDate, toDate: untilDate })
}

/** What is assumed, missing or wrong: the way to the list of it. */
function openText({ plan, problems, words }: JobView): string {
  if (!plan) return labelOf('frame.planning')
  const { notes } = plan
  return words.sentence('frame.openCount', {
    assumed: notes.filter(({ severity }) => severity === 'assumed').length,
    missing: notes.filter(({ severity }) => severity === 'missing').length,
    wrong: problems.length,
  })
}

/** Over the sheet of a phone: which boat, and where the edits are. */
export const phoneHead = (view: JobView): SheetHead => ({
  title: boatName(view),
  aside: labelOf(`frame.kept.${view.kept.where}`),
})
