/** The weather the plan stands on, and the way to give another: a file read on this device. */

import { useState } from 'react'
import { labelOf, problemLine } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { Part, Progress } from '../../parts/index.ts'
import { readWeatherInWorker } from '../../worker/import-client.ts'
import { FileButton } from '../file-button.tsx'
import { FetchWeather } from './fetch-weather.tsx'
import './give-weather.css'
import { WeatherSource } from './weather-source.tsx'

type State =
  | { readonly kind: 'still' | 'reading' }
  | { readonly kind: 'refused'; readonly lines: readonly string[] }

/** Lines that are shown of a file that does not read. */
const mostLines = 12

export const GiveWeather = ({ view }: { readonly view: JobView }) => {
  const { words, readOnly } = view
  const [state, setState] = useState<State>({ kind: 'still' })
  const bring = async (file: File): Promise<void> => {
    setState({ kind: 'reading' })
    const { given, problems } = await readWeatherInWorker(file)
    if (!given) {
      return setState({
        kind: 'refused',
        lines: problems.map((problem) => problemLine(words, file.name, problem)),
      })
    }
    try {
      await view.giveWeather({ ...given, file: file.name })
      setState({ kind: 'still' })
    } catch (error) {
      const code = error instanceof Error ? error.message : 'web.deviceFault'
      setState({ kind: 'refused', lines: [words.sentence(code)] })
    }
  }
  return (
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
      {state.kind === 'reading' ? <Progress label={labelOf('import.reading')} /> : null}
      {state.kind === 'refused' ? (
        <ul role="alert" className="give-weather-problems">
          {state.lines.slice(0, mostLines).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : null}
    </Part>
  )
}

/** From which day to which it reaches. */
function weatherText({ plan, raw, words, timeZone }: JobView): string {
  if (!plan) return labelOf('frame.planning')
  const { file } = raw.work.weather ?? {}
  const name = typeof file === 'string' ? file : ''
  const { air, firstMinute, lastMinute } = plan.conditions
  if (air.length === 0) return words.sentence('daysscreen.weatherNone')
  return words.sentence('daysscreen.weatherIs', {
    name: name === '' ? labelOf('daysScreen.weatherNoName') : name,
    fromDate: localDate(firstMinute, timeZone),
    toDate: localDate(lastMinute, timeZone),
  })
}
