/** The days of one zone on a phone: time runs down the tape, beside it rain, hours, work, waits and windows. */
import { describeStep } from '#plan'
import { labelOf } from '#words'
import { ChoiceField, HoursKey, percent, shareOf, UprightTape, uprightHeight } from '../../parts/index.ts'
import { hourSpans, hoursOfZone, type Minutes } from '../hour-spans.ts'
import { isSame } from './chosen.ts'
import { HorizonKey, HorizonSay, UprightHorizon } from './horizon-mark.tsx'
import { HoursPick } from './hours-pick.tsx'
import { NextHours } from './next-hours.tsx'
import { Drop, rainLong, rainTotals, unknownRain } from './rain-strokes.tsx'
import type { ShownDay } from './shown-days.ts'
import { UprightBars } from './upright-bars.tsx'
import { CurvesKey, UprightCurves } from './upright-curves.tsx'
import { type WeatherHour, weatherHours } from './weather-hours.ts'
import { WeatherKey } from './weather-key.tsx'
import type { ZoneChartProps } from './zone-chart.tsx'
import { type ZoneDays, zoneDays } from './zone-days.ts'

export type UprightChartProps = Omit<ZoneChartProps, 'width'> & {
  readonly zone: string | undefined
  readonly onZone: (zone: string) => void
}

export const UprightChart = (props: UprightChartProps) => {
  const { view, plan, windows, days, zone, onZone, chosen, onChoose } = props
  const { words, timeZone, locale, nowMs } = view
  const within = { fromMinute: days[0]?.fromMinute ?? 0, toMinute: days.at(-1)?.toMinute ?? 0 }
  const span = { fromMs: within.fromMinute * 60_000, toMs: within.toMinute * 60_000 }
  const zones = [...plan.surfaces.zones, ...plan.marks.zones]
  const rows = zoneDays({ plan, windows, within })
  const shown = rowShown(rows, zone)
  if (shown === undefined) return null
  const nameOf = (id: string): string =>
    zones.find((one) => one.id === id)?.name ?? labelOf('daysScreen.wholeBoat')
  const hours = shown.zone === '' ? undefined : hoursOfZone(plan, shown.zone, within.fromMinute)
  const weather = weatherHours(plan, within)
  const here = nowMs > span.fromMs && nowMs < span.toMs
  return (
    <>
      <ChoiceField
        as="list"
        label={labelOf('daysScreen.zone')}
        choices={rows.map((row) => ({
          value: row.zone,
          label: words.sentence('daysscreen.zoneWork', { zone: nameOf(row.zone), count: row.bars.length }),
        }))}
        value={shown.zone}
        onChange={onZone}
      />
      {shown.zone === '' ? null : <NextHours {...{ view, plan, within }} zones={[shown.zone]} />}
      <HorizonSay {...{ view, plan, within }} />
      <div className="days-upright" style={{ minHeight: uprightHeight(span) }}>
        <Nights days={days} within={within} />
        <UprightTape
          {...{ ...span, timeZone, locale }}
          nowMs={here ? nowMs : undefined}
          label={words.sentence('daysscreen.weeks', {
            fromDate: days[0]?.date ?? '',
            toDate: days.at(-1)?.date ?? '',
          })}
        />
        <UprightRain
          hours={weather}
          within={within}
          label={words.sentence('daysscreen.rain', rainTotals(weather))}
        />
        <UprightCurves
          {...{ view, plan, days, within }}
          place={hours?.place ?? 'boat'}
          high={(within.toMinute - within.fromMinute) * uprightPxPerMinute}
        />
        {hours ? (
          <div className="days-upright-hours" style={{ height: uprightHeight(span) }}>
            <HoursPick
              {...{ view, hours, within }}
              upright
              zoneName={nameOf(shown.zone)}
              minute={chosen?.kind === 'hour' && chosen.zone === shown.zone ? chosen.minute : undefined}
              onMinute={(minute) => onChoose({ kind: 'hour', zone: shown.zone, minute, hoursKey: hours.key })}
            />
          </div>
        ) : null}
        <UprightBars
          {...{ view, plan, within }}
          bars={shown.bars}
          lines={shown.lines}
          nameOf={(bar) => {
            const { code, data } = describeStep(plan, bar.step)
            return words.sentence(code, data)
          }}
          isChosen={(bar) => isSame(chosen, { kind: 'bar', bar })}
          onBar={(bar) => onChoose({ kind: 'bar', bar })}
        />
        <UprightHorizon {...{ plan, within }} />
        {here ? <div className="days-upright-now" style={{ top: topOf(nowMs / 60_000, within) }} /> : null}
      </div>
      <div className="days-keys">
        {hours ? <HoursKey used={[...new Set(hourSpans(hours, within).map(({ kind }) => kind))]} /> : null}
        <WeatherKey hours={weather} words={words} rainOnly />
        <CurvesKey />
        <HorizonKey {...{ plan, within }} />
      </div>
    </>
  )
}

/** The one that was chosen, else the first with work that is about one zone, else the first with any. */
function rowShown(rows: readonly ZoneDays[], zone: string | undefined): ZoneDays | undefined {
  const busy = rows.filter(({ bars, lines }) => bars.length + lines.length > 0)
  return (
    rows.find((row) => row.zone === zone) ??
    busy.find((row) => row.zone !== '') ??
    busy[0] ??
    rows.find((row) => row.zone !== '') ??
    rows[0]
  )
}

const topOf = (minute: number, { fromMinute, toMinute }: Minutes): string =>
  percent(shareOf(minute, { fromMs: fromMinute, toMs: toMinute }))

/** Before six and after eight, and a line at each midnight. */
const Nights = ({ days, within }: { readonly days: readonly ShownDay[]; readonly within: Minutes }) => {
  const block = (from: number, to: number) => ({
    top: `${(from - within.fromMinute) * uprightPxPerMinute}px`,
    height: `${(to - from) * uprightPxPerMinute}px`,
  })
  return days.flatMap(({ date, fromMinute, toMinute }) => [
    <div
      key={`${date} morning`}
      className="days-upright-night"
      style={block(fromMinute, fromMinute + 360)}
    />,
    <div key={`${date} evening`} className="days-upright-night" style={block(toMinute - 240, toMinute)} />,
    <div
      key={`${date} midnight`}
      className="days-upright-midnight"
      style={{ top: block(fromMinute, fromMinute).top }}
    />,
  ])
}

export const uprightPxPerMinute = 24 / 60

type UprightRainProps = {
  readonly hours: readonly WeatherHour[]
  readonly within: Minutes
  readonly label: string
}

/** Hangs from the tape, as it hangs from the top where time runs across. */
const UprightRain = ({ hours, within, label }: UprightRainProps) => {
  const y = (minute: number): number => (minute - within.fromMinute) * uprightPxPerMinute
  return (
    <svg className="days-upright-rain" width="40" height={y(within.toMinute)} role="img" aria-label={label}>
      {unknownRain(hours).map(({ fromMinute, toMinute }) => (
        <rect
          key={fromMinute}
          className="days-not-known"
          x="1"
          y={y(fromMinute) + 1}
          width="11"
          height={Math.max(1, y(toMinute) - y(fromMinute) - 2)}
        />
      ))}
      {hours.map(({ minute, rain }) => {
        const long = rainLong(rain)
        return long === 0 ? null : (
          <Drop
            key={minute}
            kind={rain.kind}
            long={long}
            wide={8}
            transform={`translate(0 ${y(minute + 30)}) rotate(-90)`}
          />
        )
      })}
    </svg>
  )
}
