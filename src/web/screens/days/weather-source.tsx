/** The weather at hand: where it is from, on what terms, when it was read, from when to when it reaches, and its holes. */
import { labelOf } from '#words'
import { cellOf, type JobView } from '../../job/job-view.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { type Told, ToldList } from './told-list.tsx'
import { useWeather } from './use-weather.ts'

export type WeatherSourceProps = { readonly view: JobView; readonly plan: ShownPlan }

/** Holes that are told one by one. */
const mostGaps = 6

export const WeatherSource = ({ view, plan }: WeatherSourceProps) => {
  const { words, timeZone } = view
  const weather = useWeather(view, plan)
  if (!weather) return null
  const { source, licence, firstMinute, hours, gaps, sunFrom, typicalYear, behind } = weather
  const read = Date.parse(cellOf(view, { part: 'work', section: 'weather', key: 'read' }) ?? '')
  const told = (text: string): string => (text === '' ? labelOf('daysScreen.notTold') : text)
  const rows: Told = [
    ['daysScreen.weatherFrom', told(source)],
    ['daysScreen.licence', told(licence)],
    [
      'daysScreen.weatherRead',
      Number.isNaN(read) ? labelOf('daysScreen.notKnown') : words.moment(read, timeZone),
    ],
    [
      'daysScreen.weatherReach',
      words.sentence('daysscreen.reach', {
        fromAtMs: firstMinute * 60_000,
        untilAtMs: (firstMinute + 60 * hours) * 60_000,
        count: hours,
        typical: typicalYear ? 'yes' : 'no',
        timeZone,
      }),
    ],
    ...(behind && !typicalYear
      ? ([
          ['daysScreen.typicalYear', told(behind.source)],
          [
            'daysScreen.typicalFrom',
            words.sentence('daysscreen.goesOver', {
              fromAtMs: behind.forecastUntilMinute * 60_000,
              untilAtMs: behind.typicalFromMinute * 60_000,
              timeZone,
            }),
          ],
        ] as const)
      : []),
    ['daysScreen.gaps', gapsText(view, gaps)],
    ['daysScreen.sunFrom', labelOf(`sunFrom.${sunFrom}`)],
  ]
  return <ToldList className="weather-source" told={rows} />
}

type Gaps = NonNullable<ReturnType<typeof useWeather>>['gaps']

function gapsText({ words, timeZone }: JobView, gaps: Gaps): string {
  if (gaps.length === 0) return labelOf('daysScreen.noGaps')
  const some = gaps.slice(0, mostGaps).map(({ fromMinute, hours }) =>
    words.sentence('daysscreen.gap', {
      fromAtMs: fromMinute * 60_000,
      untilAtMs: (fromMinute + 60 * hours) * 60_000,
      timeZone,
    }),
  )
  const left = gaps.length - some.length
  return [...some, ...(left > 0 ? [words.sentence('daysscreen.moreGaps', { count: left })] : [])].join('; ')
}
