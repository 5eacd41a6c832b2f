/** The weather of the days shown as tables: what stands in the drawing, hour by hour. */
import type { BehindSpread } from '#plan'
import { labelOf, type Words } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Ledger } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { originLabel } from './like-days.ts'
import type { ShownDay } from './shown-days.ts'
import { useWeather } from './use-weather.ts'
import { type Rain, type WeatherHour, type Wind, weatherHours } from './weather-hours.ts'
import { knotsOf } from './wind-barb.ts'

export type WeatherTableProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly days: readonly ShownDay[]
}

export const WeatherTable = ({ view, plan, days }: WeatherTableProps) => {
  const { words, timeZone } = view
  const behind = useWeather(view, plan)?.behind
  return days.map((day) => (
    <div key={day.date} className="days-day">
      <Ledger
        caption={words.date(day.date)}
        captionShown
        columns={[
          { key: 'time', label: labelOf('daysScreen.time'), phone: 'first' },
          { key: 'air', label: labelOf('daysScreen.airLimit'), align: 'right', named: true },
          { key: 'dew', label: labelOf('daysScreen.dewPoint'), align: 'right', named: true },
          { key: 'skin', label: labelOf('daysScreen.skinColumn'), align: 'right', named: true },
          { key: 'rain', label: labelOf('daysScreen.rain'), align: 'right', named: true },
          { key: 'wind', label: labelOf('daysScreen.wind'), align: 'right', phone: 'side' },
          ...(plan.conditions.horizon
            ? [{ key: 'from', label: labelOf('daysScreen.weatherFrom'), named: true } as const]
            : []),
        ]}
        rows={weatherHours(plan, day).map((hour) => ({
          id: String(hour.minute),
          cells: {
            ...cellsOf(hour, words, timeZone),
            from: fromText({ plan, words, behind }, hour.minute),
          },
        }))}
      />
    </div>
  ))
}

type Behind = {
  readonly plan: ShownPlan
  readonly words: Words
  readonly behind: BehindSpread | undefined
}

/** Where an hour is from, and behind the forecast how far apart the air of like days lies. */
function fromText({ plan, words, behind }: Behind, minute: number): string {
  const origin = originLabel(plan, minute)
  const at = behind ? Math.round((minute - behind.firstMinute) / 60) : -1
  const [lowC, highC] = [behind?.airC.low[at] ?? Number.NaN, behind?.airC.high[at] ?? Number.NaN]
  return Number.isNaN(lowC + highC)
    ? origin
    : words.sentence('daysscreen.originSpread', { origin, lowC, highC })
}

function cellsOf({ minute, air, rain, wind }: WeatherHour, words: Words, timeZone: string) {
  const figure = (key: 'airC' | 'dewC' | 'surfaceC'): string =>
    air === undefined ? labelOf('daysScreen.notKnown') : words.figure(key, air[key])
  return {
    time: words.time(minute * 60_000, timeZone),
    air: figure('airC'),
    dew: figure('dewC'),
    skin: figure('surfaceC'),
    rain: rainText(rain, words),
    wind: windText(wind, words),
  }
}

export function rainText(rain: Rain, words: Words): string {
  switch (rain.kind) {
    case 'fell':
      return words.figure('rainMm', rain.mm)
    case 'chance':
      return words.sentence('daysscreen.rainChance', { chanceShare: rain.share })
    case 'dry':
      return labelOf('daysScreen.noRain')
    case 'unknown':
      return labelOf('daysScreen.notKnown')
  }
}

export function windText(wind: Wind | undefined, words: Words): string {
  if (wind === undefined) return labelOf('daysScreen.notKnown')
  return words.sentence('daysscreen.wind', {
    windMps: wind.mps,
    knots: Math.round(knotsOf(wind.mps)),
    ...(wind.fromRad === undefined
      ? {}
      : { from: words.figure('fromDeg', Math.round((wind.fromRad * 180) / Math.PI)) }),
  })
}
