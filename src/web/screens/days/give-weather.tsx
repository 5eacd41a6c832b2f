/** The weather the plan stands on, and the way to give another: a file read on this device. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { Button, Part } from '../../parts/index.ts'
import { FileButton } from '../file-button.tsx'
import { DropFiles } from '../jobs/drop-files.tsx'
import { FetchWeather } from './fetch-weather.tsx'
import './give-weather.css'
import { isAlone } from './horizon-mark.tsx'
import { Taking, useTakeRows } from './take-rows.tsx'
import { WeatherSource } from './weather-source.tsx'

export const GiveWeather = ({ view }: { readonly view: JobView }) => {
  const { words, readOnly } = view
  const taking = useTakeRows(view, (given) =>
    view.giveWeather({ ...given, soleTypical: isSoleTypical(view) }),
  )
  const { state, bring } = taking
  return (
    <DropFiles
      hint={labelOf('daysScreen.dropWeather')}
      onFiles={([file]) => file && !readOnly && void bring(file)}
    >
      <Part title={labelOf('daysScreen.weather')}>
        <p>{weatherText(view)}</p>
        {view.plan ? <WeatherSource view={view} plan={view.plan} /> : null}
        <p className="give-weather-say">{words.sentence('daysscreen.weatherSay')}</p>
        <FileButton
          label={labelOf('daysScreen.giveWeather')}
          accept=".csv,.txt,.epw,.json"
          onFiles={([file]) => {
            if (file) void bring(file)
          }}
          disabled={readOnly || state.kind === 'reading'}
        />
        <FetchWeather view={view} busy={state.kind === 'reading'} bring={bring} />
        {typeof view.raw.work.weather?.typicalHash === 'string' ? (
          <Button onClick={view.dropTypical} disabled={readOnly}>
            {labelOf('daysScreen.dropTypical')}
          </Button>
        ) : null}
        <Taking view={view} taking={taking} />
      </Part>
    </DropFiles>
  )
}

/** From a time when a job had but one weather: a typical year stands where a forecast would. */
const isSoleTypical = ({ raw, plan }: JobView): boolean =>
  plan !== undefined &&
  isAlone(plan) &&
  typeof raw.work.weather?.hash === 'string' &&
  raw.work.weather.typicalHash === undefined

/** From which day to which it reaches. */
function weatherText({ plan, raw, words, timeZone }: JobView): string {
  if (!plan) return labelOf('frame.planning')
  const { file, typicalFile } = raw.work.weather ?? {}
  const text = (cell: unknown): string => (typeof cell === 'string' ? cell : '')
  const name = text(file)
  const { air, firstMinute, lastMinute, horizon } = plan.conditions
  if (air.length === 0) return words.sentence('daysscreen.weatherNone')
  if (horizon && !isAlone(plan))
    return words.sentence('daysscreen.weatherThen', {
      name: name === '' ? labelOf('daysScreen.weatherNoName') : name,
      fromDate: localDate(firstMinute, timeZone),
      toDate: localDate(horizon.forecastUntilMinute, timeZone),
      typical: text(typicalFile) || labelOf('daysScreen.typicalNoName'),
      lastDate: localDate(lastMinute, timeZone),
    })
  return words.sentence('daysscreen.weatherIs', {
    name: name || text(typicalFile) || labelOf('daysScreen.weatherNoName'),
    fromDate: localDate(firstMinute, timeZone),
    toDate: localDate(lastMinute, timeZone),
  })
}
