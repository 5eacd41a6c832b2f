/** The boat in space as warm as she is at an hour: each side by its skin, a slider for the hour, a key in degrees, a table. */
import { lazy, Suspense, useCallback, useMemo, useState } from 'react'
import type { SolidFace } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Ledger, Part, Progress } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { useInks } from '../boat/solid/use-inks.ts'
import { hoursOfZone, type Minutes } from '../hour-spans.ts'
import { type Chosen, keyOf } from './chosen.ts'
import './heat-part.css'
import {
  bandColour,
  bandOf,
  bandsEachSide,
  type HeatInks,
  type HeatScale,
  heatScale,
  heatsAt,
  type PlaceHeat,
  placeOfFace,
} from './heat-scale.ts'
import { useWeather } from './use-weather.ts'

const SolidView = lazy(async () => ({ default: (await import('../boat/solid/solid-view.tsx')).SolidView }))

export type HeatPartProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly within: Minutes
  readonly chosen: Chosen | undefined
  readonly onChoose: (chosen: Chosen) => void
}

/** Nothing of space is fetched until somebody opens it. */
export const HeatPart = (props: HeatPartProps) => {
  const [open, setOpen] = useState(false)
  return (
    <Part label={labelOf('daysScreen.heat')}>
      <details className="fold" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary className="fold-title">{labelOf('daysScreen.heat')}</summary>
        {open ? <Heat {...props} /> : null}
      </details>
    </Part>
  )
}

const Heat = (props: HeatPartProps) => {
  const { view, plan, within, chosen, onChoose } = props
  const { words, timeZone } = view
  const [slid, setSlid] = useState<{ readonly minute: number; readonly over: string }>()
  const minute = clamped(slid?.over === keyOf(chosen) ? slid.minute : hourOf(props), within)
  const weather = useWeather(view, plan)
  const heats = useMemo(() => heatsAt(plan, weather, minute), [plan, weather, minute])
  const scale = useMemo(() => scaleOf(heats), [heats])
  const inks = useInks()
  const heat = useCallback(
    (face: SolidFace): string | undefined => {
      const skinC = heats.find(({ place }) => place === placeOfFace(face, plan))?.skinC
      return skinC === undefined || !scale ? undefined : bandColour(bandOf(skinC, scale), inks)
    },
    [heats, scale, inks, plan],
  )
  const when = words.moment(minute * 60_000, timeZone)
  const zone = chosen?.kind === 'hour' ? chosen.zone : undefined
  const choose = (of: string): void => {
    const hours = hoursOfZone(plan, of, within.fromMinute)
    if (hours) onChoose({ kind: 'hour', zone: of, minute, hoursKey: hours.key })
  }
  return (
    <div className="heat">
      <p>{heatSentence(view, heats, when)}</p>
      <label className="heat-hour">
        <span>{labelOf('daysScreen.heatHour')}</span>
        <input
          type="range"
          className="days-range"
          min={within.fromMinute / 60}
          max={within.toMinute / 60 - 1}
          value={minute / 60}
          aria-valuetext={when}
          onChange={({ currentTarget }) =>
            setSlid({ minute: Number(currentTarget.value) * 60, over: keyOf(chosen) })
          }
        />
        <output>{when}</output>
      </label>
      <Suspense fallback={<Progress label={labelOf('frame.planning')} />}>
        <SolidView {...{ view, plan, heat }} finish="drawn" chosen={zone} onChoose={choose} />
      </Suspense>
      {scale ? <HeatKey view={view} scale={scale} inks={inks} /> : null}
      {heats.length === 0 ? null : <HeatTable view={view} heats={heats} when={when} />}
    </div>
  )
}

/** The hour asked about, else now, else noon of the first day shown. */
function hourOf({ view, chosen, within }: HeatPartProps): number {
  if (chosen?.kind === 'hour') return chosen.minute
  const now = Math.floor(view.nowMs / 3_600_000) * 60
  return now >= within.fromMinute && now < within.toMinute ? now : within.fromMinute + 12 * 60
}

const clamped = (minute: number, { fromMinute, toMinute }: Minutes): number =>
  Math.min(toMinute - 60, Math.max(fromMinute, minute))

const scaleOf = (heats: readonly PlaceHeat[]): HeatScale | undefined =>
  heats[0] && heatScale({ airC: heats[0].airC, skinsC: heats.map(({ skinC }) => skinC) })

function heatSentence({ words }: JobView, heats: readonly PlaceHeat[], when: string): string {
  const [first] = heats
  if (!first) return words.sentence('daysscreen.heatNone', { when })
  const warmest = heats.reduce((most, one) => (one.skinC > most.skinC ? one : most))
  const coldest = heats.reduce((least, one) => (one.skinC < least.skinC ? one : least))
  const named = ({ place }: PlaceHeat): string => labelOf(`litPlace.${place}`)
  return warmest.skinC - coldest.skinC < 0.05
    ? words.sentence('daysscreen.heatAlike', { when, skinC: first.skinC, airC: first.airC })
    : words.sentence('daysscreen.heatApart', {
        when,
        warmest: named(warmest),
        warmestC: warmest.skinC,
        coldest: named(coldest),
        coldestC: coldest.skinC,
        airC: first.airC,
      })
}

type KeyProps = { readonly view: JobView; readonly scale: HeatScale; readonly inks: HeatInks }

/** Bands from cool to warm, each with the temperature of its middle. */
const HeatKey = ({ view: { words }, scale, inks }: KeyProps) => (
  <ul className="heat-key" aria-label={labelOf('daysScreen.heatKey')}>
    {Array.from({ length: 2 * bandsEachSide + 1 }, (_, at) => at - bandsEachSide).map((band) => (
      <li key={band}>
        <svg width="100%" height="20" aria-hidden="true">
          <rect width="100%" height="20" fill={bandColour(band, inks)} stroke="var(--ink)" strokeWidth="1" />
        </svg>
        <span>{words.figure('skinC', scale.airC + band * scale.bandK)}</span>
        {band === 0 ? <small>{labelOf('daysScreen.air')}</small> : null}
      </li>
    ))}
  </ul>
)

type TableProps = {
  readonly view: JobView
  readonly heats: readonly PlaceHeat[]
  readonly when: string
}

const HeatTable = ({ view: { words }, heats, when }: TableProps) => {
  const isLit = heats.some(({ lightWm2 }) => lightWm2 !== undefined)
  return (
    <Ledger
      caption={words.sentence('daysscreen.heatTable', { when })}
      columns={[
        { key: 'place', label: labelOf('daysScreen.heatPlace'), phone: 'first' },
        { key: 'skin', label: labelOf('daysScreen.skinColumn'), align: 'right', phone: 'side' },
        { key: 'overAir', label: labelOf('daysScreen.overAir'), align: 'right', named: true },
        { key: 'overDew', label: labelOf('daysScreen.dewLimit'), align: 'right', named: true },
        ...(isLit
          ? [{ key: 'light', label: labelOf('daysScreen.light'), align: 'right', named: true } as const]
          : []),
      ]}
      rows={heats.map(({ place, skinC, airC, dewC, lightWm2 }) => ({
        id: place,
        cells: {
          place: labelOf(`litPlace.${place}`),
          skin: words.figure('skinC', skinC),
          overAir: words.figure('overAirK', skinC - airC),
          overDew: words.figure('marginK', skinC - dewC),
          light: lightWm2 === undefined ? '' : words.figure('lightWPerM2', Math.round(lightWm2)),
        },
      }))}
    />
  )
}
