/** The weather of one hour as figures, with the skin of the zone: all that its verdict is made of, to check it by hand. */
import type { JobView } from '../../job/job-view.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { airThen } from '../air-now.ts'
import { originLabel } from './like-days.ts'
import { type Told, ToldList } from './told-list.tsx'
import { useWeather } from './use-weather.ts'
import { weatherHours } from './weather-hours.ts'
import { rainText, windText } from './weather-table.tsx'

export type HourFiguresProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  /** Whose skin it is. */
  readonly place: string
  readonly minute: number
}

export const HourFigures = ({ view, plan, place, minute }: HourFiguresProps) => {
  const { words } = view
  const air = airThen(plan, place, minute)
  const hour = weatherHours(plan, { fromMinute: minute, toMinute: minute + 60 })[0]
  const weather = useWeather(view, plan)
  const sun = weather?.sunWm2[Math.floor((minute - weather.firstMinute) / 60)]
  if (!air || !hour) return null
  const rows: Told = [
    ...(plan.conditions.horizon ? ([['daysScreen.weatherFrom', originLabel(plan, minute)]] as const) : []),
    ['daysScreen.airLimit', words.figure('airC', air.airC)],
    ['daysScreen.humidityLimit', words.figure('humidityShare', air.humidityShare)],
    ['daysScreen.dewPoint', words.figure('dewC', air.dewC)],
    ['daysScreen.skinColumn', words.figure('surfaceC', air.surfaceC)],
    ['daysScreen.dewLimit', words.figure('marginK', air.marginK)],
    ['daysScreen.rain', rainText(hour.rain, words)],
    ['daysScreen.wind', windText(hour.wind, words)],
    ...(sun === undefined || Number.isNaN(sun)
      ? []
      : ([['daysScreen.sun', words.figure('sunWPerM2', Math.round(sun))]] as const)),
  ]
  return <ToldList className="days-figures" told={rows} />
}
