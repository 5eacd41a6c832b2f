/** Some days on one tape: the weather over it, and under it a row a zone with its hours, work, waits and windows. */
import type { CoatWindow } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { HoursKey, NowLine, percent, shareOf, TimeTape } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { hourSpans, hoursOfZone, type Minutes } from '../hour-spans.ts'
import { stepOf } from '../today/today-state.ts'
import { ChartKey } from './chart-key.tsx'
import type { Chosen } from './chosen.ts'
import { HandsRow } from './hands-row.tsx'
import { HorizonKey, HorizonLine, HorizonSay } from './horizon-mark.tsx'
import { NextHours } from './next-hours.tsx'
import type { ShownDay } from './shown-days.ts'
import { WeatherChart } from './weather-chart.tsx'
import { weatherHours } from './weather-hours.ts'
import { WeatherKey } from './weather-key.tsx'
import { type ZoneDays, zoneDays } from './zone-days.ts'
import { ZoneRow } from './zone-row.tsx'

export type ZoneChartProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly windows: readonly CoatWindow[]
  readonly days: readonly ShownDay[]
  readonly width: number
  /** Letters this many times as large as usual, with the room they take. */
  readonly letters?: number
  readonly chosen: Chosen | undefined
  readonly onChoose: (chosen: Chosen | undefined) => void
}

/** Width of the names, px. */
const nameWidth = 132

export const ZoneChart = (props: ZoneChartProps) => {
  const { view, plan, windows, days, width, chosen, letters = 1 } = props
  const { words, timeZone, locale, nowMs } = view
  const within = { fromMinute: days[0]?.fromMinute ?? 0, toMinute: days.at(-1)?.toMinute ?? 0 }
  const span = { fromMs: within.fromMinute * 60_000, toMs: within.toMinute * 60_000 }
  const zones = [...plan.surfaces.zones, ...plan.marks.zones]
  const rows = zoneDays({ plan, windows, within })
  const busy = rows.filter(({ bars, lines }) => bars.length + lines.length > 0)
  const quiet = rows.filter((row) => !busy.includes(row) && row.zone !== '')
  const kinds = kindsUsed(plan, busy, within)
  const nameOf = (id: string): string =>
    zones.find((zone) => zone.id === id)?.name ?? labelOf('daysScreen.wholeBoat')
  const here = nowMs > span.fromMs && nowMs < span.toMs
  return (
    <>
      <NextHours {...{ view, plan, within }} zones={busy.flatMap(({ zone }) => zone || [])} />
      <HorizonSay {...{ view, plan, within }} />
      <div className="days-chart">
        <div className="days-shade" aria-hidden="true">
          <Nights days={days} span={span} />
        </div>
        {chosen?.kind === 'hour' ? <AskedHour minute={chosen.minute} span={span} /> : null}
        <HorizonLine {...{ plan, within }} />
        {here ? (
          <div className="days-now">
            <NowLine {...span} nowMs={nowMs} />
          </div>
        ) : null}
        <div className="days-row days-row-tape">
          <span className="days-name" />
          <TimeTape
            {...span}
            {...{ timeZone, locale }}
            days
            letters={letters}
            every={6}
            nowMs={here ? nowMs : undefined}
            label={words.sentence('daysscreen.weeks', {
              fromDate: days[0]?.date ?? '',
              toDate: days.at(-1)?.date ?? '',
            })}
          />
        </div>
        <div className="days-row">
          <div className="days-name days-weather-names">
            <span>{labelOf('daysScreen.rain')}</span>
            <span>{labelOf('daysScreen.sun')}</span>
            <span>{labelOf('daysScreen.weather')}</span>
            <span>{labelOf('daysScreen.windBarbs')}</span>
          </div>
          <WeatherChart
            view={view}
            plan={plan}
            within={within}
            width={Math.max(200, width - nameWidth * letters)}
            {...skinAsked(plan, chosen, nameOf)}
          />
        </div>
        {busy.map((row) => (
          <ZoneRow
            key={row.zone}
            {...props}
            row={row}
            name={nameOf(row.zone)}
            area={zones.find(({ id }) => id === row.zone)?.areaM2}
            within={within}
          />
        ))}
        <HandsRow view={view} plan={plan} days={days} within={within} />
      </div>
      <div className="days-keys">
        {kinds.length === 0 ? null : <HoursKey used={kinds} />}
        <ChartKey rows={busy} />
        <WeatherKey hours={weatherHours(plan, within)} words={words} />
        <HorizonKey {...{ plan, within }} />
      </div>
      {quiet.length === 0 ? null : (
        <p className="days-quiet">
          {words.sentence('daysscreen.quiet', { names: quiet.map(({ zone }) => nameOf(zone)).join(', ') })}
        </p>
      )}
    </>
  )
}

/** The skin drawn is that of the zone asked about, else the boat's. */
function skinAsked(plan: ShownPlan, chosen: Chosen | undefined, nameOf: (id: string) => string) {
  const step = chosen?.kind === 'bar' ? stepOf(plan, chosen.bar.step) : undefined
  const [key, zone] = chosen?.kind === 'hour' ? [chosen.hoursKey, chosen.zone] : [step?.hoursKey, step?.zone]
  const hours = plan.conditions.zones.find((one) => one.key === key)
  const isThere = hours && plan.conditions.air.some((air) => air.key === hours.place)
  return isThere ? { place: hours.place, of: nameOf(zone ?? '') } : { place: 'boat', of: undefined }
}

/** Kinds of hours in the strips of these zones. */
function kindsUsed(plan: ShownPlan, rows: readonly ZoneDays[], within: Minutes) {
  const spans = rows.flatMap(({ zone }) => {
    const hours = zone === '' ? undefined : hoursOfZone(plan, zone, within.fromMinute)
    return hours ? hourSpans(hours, within) : []
  })
  return [...new Set(spans.map(({ kind }) => kind))]
}

type AskedHourProps = {
  readonly minute: number
  readonly span: { readonly fromMs: number; readonly toMs: number }
}

/** The hour asked about, through weather and rows. */
const AskedHour = ({ minute, span }: AskedHourProps) => {
  const [from, to] = [minute, minute + 60].map((one) => shareOf(one * 60_000, span)) as [number, number]
  if (to <= 0 || from >= 1) return null
  return (
    <div className="days-now" aria-hidden="true">
      <div className="days-asked" style={{ left: percent(from), width: percent(to - from) }} />
    </div>
  )
}

type NightsProps = {
  readonly days: readonly ShownDay[]
  readonly span: { readonly fromMs: number; readonly toMs: number }
}

/** Before six and after eight, and a line at each midnight. */
const Nights = ({ days, span }: NightsProps) =>
  days.flatMap(({ date, fromMinute, toMinute }) => {
    const at = (minute: number): number => shareOf(minute * 60_000, span)
    const block = (from: number, to: number) => ({
      left: percent(at(from)),
      width: percent(at(to) - at(from)),
    })
    return [
      <div key={`${date} morning`} className="days-night" style={block(fromMinute, fromMinute + 360)} />,
      <div key={`${date} evening`} className="days-night" style={block(toMinute - 240, toMinute)} />,
      <div key={`${date} midnight`} className="days-midnight" style={{ left: percent(at(fromMinute)) }} />,
    ]
  })
