/** The weather the plan stands on, and the way to give another: a file read on this device. */

import { useState } from 'react'
import type { TableHints, TableLook } from '#intake'
import { labelOf, problemLine } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { Button, Part, Progress } from '../../parts/index.ts'
import { readWeatherInWorker } from '../../worker/import-client.ts'
import type { FileProblem } from '../../worker/read-job-files.ts'
import { FileButton } from '../file-button.tsx'
import { DropFiles } from '../jobs/drop-files.tsx'
import { FetchWeather } from './fetch-weather.tsx'
import './give-weather.css'
import { isAlone } from './horizon-mark.tsx'
import { TableDialog } from './table-dialog.tsx'
import { hintsOf } from './table-said.ts'
import { WeatherSource } from './weather-source.tsx'

/** A table whose columns a person has to say. */
type Asking = {
  readonly file: File
  readonly table: TableLook
  readonly problems: readonly FileProblem[]
}

type State =
  | { readonly kind: 'still' | 'reading' }
  | { readonly kind: 'refused' | 'read'; readonly lines: readonly string[] }

/** Lines that are shown of a file that does not read. */
const mostLines = 12

export const GiveWeather = ({ view }: { readonly view: JobView }) => {
  const { words, readOnly } = view
  const [state, setState] = useState<State>({ kind: 'still' })
  const [asking, setAsking] = useState<Asking>()
  const bring = async (file: File, hints?: TableHints): Promise<void> => {
    setState({ kind: 'reading' })
    const { given, problems, notes = [], table } = await readWeatherInWorker(file, hints)
    if (!given && table) {
      setState({ kind: 'still' })
      // What was said stays: only the complaints are new.
      return setAsking((was) => ({ file, table: was?.file === file ? was.table : table, problems }))
    }
    setAsking(undefined)
    if (!given) {
      return setState({
        kind: 'refused',
        lines: problems.map((problem) => problemLine(words, file.name, problem)),
      })
    }
    try {
      await view.giveWeather({ ...given, file: file.name, soleTypical: isSoleTypical(view) })
      setState({ kind: 'read', lines: notes.map(({ code, data }) => words.sentence(code, data)) })
    } catch (error) {
      const code = error instanceof Error ? error.message : 'web.deviceFault'
      setState({ kind: 'refused', lines: [words.sentence(code)] })
    }
  }
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
        {state.kind === 'reading' ? <Progress label={labelOf('import.reading')} /> : null}
        {state.kind === 'refused' ? (
          <div role="alert">
            <ul className="give-weather-problems">
              {state.lines.slice(0, mostLines).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </div>
        ) : null}
        {state.kind === 'read' && state.lines.length > 0 ? (
          <div role="status">
            <ul className="give-weather-say">
              {state.lines.slice(0, mostLines).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </div>
        ) : null}
        {asking ? (
          <TableDialog
            view={view}
            file={asking.file.name}
            table={asking.table}
            problems={asking.problems}
            reading={state.kind === 'reading'}
            onRead={(said) => void bring(asking.file, hintsOf(said, asking.table.zoned))}
            onClose={() => setAsking(undefined)}
          />
        ) : null}
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
