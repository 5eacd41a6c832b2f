/** First said of the days shown: which zone can take a coat when, and what ends it. */
import { useCallback, useEffect, useState } from 'react'
import { describeMadeHour, heatCaution, limitNote, type MadeHour } from '#plan'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { CautionPanel } from '../../parts/index.ts'
import type { Failing, ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import { marginCloses, type NextStretch, nextStretches } from './next-stretch.ts'

export type NextHoursProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly zones: readonly string[]
  readonly within: Minutes
}

export const NextHours = ({ view, plan, zones, within }: NextHoursProps) => {
  const [heated, setHeated] = useState<ReadonlySet<string>>(new Set())
  const onMade = useCallback((key: string, made: MadeHour | undefined) => {
    setHeated((before) => {
      const others = [...before].filter((one) => one !== key)
      return new Set(made?.heat ? [...others, key] : others)
    })
  }, [])
  const from = Math.max(within.fromMinute, Math.floor(view.nowMs / 3_600_000) * 60)
  if (from >= within.toMinute) return null
  const stretches = nextStretches(plan, zones, { ...within, fromMinute: from })
  if (stretches.length === 0) return null
  // Once, however many products heat would help.
  const warned = stretches.some(({ hours }) => heated.has(hours.key))
  return (
    <>
      <ul className="days-next">
        {stretches.map((stretch) => (
          <Line key={stretch.hours.key} {...{ view, plan, stretch, within, onMade }} />
        ))}
      </ul>
      {warned ? (
        <div className="days-make-caution">
          <CautionPanel signal="warning">
            {view.words.sentence(heatCaution.code, heatCaution.data)}
          </CautionPanel>
        </div>
      ) : null}
    </>
  )
}

type LineProps = Pick<NextHoursProps, 'view' | 'plan' | 'within'> & {
  readonly stretch: NextStretch
  /** What would make an hour, once it is known, and again when it no longer is. */
  readonly onMade: (hoursKey: string, made: MadeHour | undefined) => void
}

const Line = ({ view, plan, stretch, within, onMade }: LineProps) => {
  const { words, timeZone, ask } = view
  const { hours, open } = stretch
  const { key, place } = hours
  // What comes after the last hour shown is not asked about: there the tape ends and not the good hours.
  const ends = open !== undefined && open.toMinute < within.toMinute ? open.toMinute : undefined
  const [failing, setFailing] = useState<Failing>([])
  useEffect(() => {
    let here = true
    setFailing([])
    if (ends !== undefined)
      ask({ kind: 'why', key, minute: ends }).then(
        (found) => here && setFailing(found),
        () => undefined,
      )
    return () => {
      here = false
    }
  }, [ask, key, ends])
  const names = zoneNames(plan, stretch)
  if (!open) return <NoneLine {...{ view, within, hoursKey: key, names, onMade }} />
  const data = {
    names,
    fromAtMs: open.fromMinute * 60_000,
    untilClock: words.time(open.toMinute * 60_000, timeZone),
    timeZone,
  }
  const first = failing[0]
  if (!first || ends === undefined) return <li>{words.sentence('daysscreen.next', data)}</li>
  const closes =
    first.limit === 'dewMargin'
      ? marginCloses(plan, { place, minute: ends + 60 * first.inHours, neededK: first.needed })
      : undefined
  if (closes !== undefined)
    return <li>{words.sentence('daysscreen.nextDew', { ...data, ...closing(view, open, closes) })}</li>
  const note = limitNote(first)
  return (
    <li>
      {words.sentence('daysscreen.nextThen', {
        ...data,
        why: words.sentence(note.code, note.data).replace(/\.$/, ''),
      })}
    </li>
  )
}

type NoneProps = Pick<LineProps, 'view' | 'within' | 'onMade'> & {
  readonly hoursKey: string
  readonly names: string
}

/** No hour takes a coat: what would make one. */
const NoneLine = ({ view, within, hoursKey, names, onMade }: NoneProps) => {
  const { words, timeZone, ask } = view
  const { fromMinute, toMinute } = within
  const [made, setMade] = useState<MadeHour>()
  useEffect(() => {
    let here = true
    setMade(undefined)
    ask({ kind: 'make an hour', key: hoursKey, fromMinute, toMinute }).then(
      (found) => here && setMade(found),
      () => undefined,
    )
    return () => {
      here = false
    }
  }, [ask, hoursKey, fromMinute, toMinute])
  useEffect(() => {
    onMade(hoursKey, made)
    return () => onMade(hoursKey, undefined)
  }, [onMade, hoursKey, made])
  return (
    <li>
      {words.sentence('daysscreen.nextNone', { names })}
      {made ? (
        <ul className="days-make">
          {describeMadeHour(made, timeZone).map(({ code, data }) => (
            <li key={`${code} ${String(data.shelter ?? '')}`}>{words.sentence(code, data)}</li>
          ))}
        </ul>
      ) : null}
    </li>
  )
}

/** The day is said where it is another. */
const closing = ({ words, timeZone }: JobView, { fromMinute }: Minutes, minute: number) =>
  localDate(minute, timeZone) === localDate(fromMinute, timeZone)
    ? { closesThen: 'sameDay', closes: words.time(minute * 60_000, timeZone) }
    : { closesThen: 'later', closes: words.moment(minute * 60_000, timeZone) }

const zoneNames = ({ surfaces, marks }: ShownPlan, { zones }: NextStretch): string =>
  zones.map((id) => [...surfaces.zones, ...marks.zones].find((zone) => zone.id === id)?.name ?? id).join(', ')
