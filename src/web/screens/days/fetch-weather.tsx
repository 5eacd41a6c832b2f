/** The forecast of an open service for where the boat stands, at a press: nothing is asked by itself. */
import { useState } from 'react'
import { labelOf } from '#words'
import {
  type FetchedForecast,
  type ForecastService,
  fetchForecast,
  forecastServices,
} from '../../device/forecast.ts'
import type { JobView } from '../../job/job-view.ts'
import { placeRad } from '../../job/place-rad.ts'
import { Button, ChoiceField, Progress } from '../../parts/index.ts'

export type FetchWeatherProps = {
  readonly view: JobView
  readonly busy: boolean
  /** Reads a file as one that was picked. */
  readonly bring: (file: File) => Promise<void>
}

export const FetchWeather = ({ view, busy, bring }: FetchWeatherProps) => {
  const { words, readOnly } = view
  const [service, setService] = useState<ForecastService>('open-meteo')
  const [asking, setAsking] = useState(false)
  const [answer, setAnswer] = useState<FetchedForecast>()
  const spot = placeRad(view)
  const ask = async (): Promise<void> => {
    if (!spot) return
    setAsking(true)
    const found = await fetchForecast(service, spot)
    setAnswer(found)
    if (found.ok) await bring(found.file)
    setAsking(false)
  }
  if (!spot) return <p className="give-weather-say">{words.sentence('feeds.noSpot')}</p>
  return (
    <div className="fetch-weather">
      <ChoiceField
        label={labelOf('daysScreen.service')}
        as="list"
        value={service}
        onChange={(value) => setService(value as ForecastService)}
        choices={forecastServices.map((value) => ({ value, label: labelOf(`service.${value}`) }))}
      />
      <Button onClick={() => void ask()} disabled={readOnly || busy || asking}>
        {labelOf('daysScreen.fetchWeather')}
      </Button>
      {asking ? <Progress label={labelOf('daysScreen.fetching')} /> : null}
      {answer && !answer.ok ? (
        <p role="alert" className="give-weather-problems">
          {words.sentence(answer.code, answer.data)}
        </p>
      ) : null}
      {answer?.ok && answer.stale ? (
        <p role="status">{words.sentence('feeds.stale', { fetchedAtMs: answer.fetchedAtMs })}</p>
      ) : null}
    </div>
  )
}
