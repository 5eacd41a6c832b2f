/** Days: hours, weather and work of some days on one tape, the whole job over them, and why work stands where it stands. */
import { useMemo, useState } from 'react'
import { coatWindows } from '#plan'
import { labelOf } from '#words'
import { Fold } from '../../fields/cells.tsx'
import { localDate } from '../../job/local-date.ts'
import { addDays, isDate } from '../../job/local-days.ts'
import { Button, DateField, Ghost, Part, PartBlock, Progress, Sheet, useWidth } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import { Crew } from './crew.tsx'
import './days.css'
import { DayList } from './day-list.tsx'
import { daysTitle, namedNotes, unplacedSentences } from './days-title.ts'
import { GiveWeather } from './give-weather.tsx'
import { JobStrip } from './job-strip.tsx'
import { daysFor, shownDays, startDate } from './shown-days.ts'
import { WeatherTable } from './weather-table.tsx'
import { WhyHere } from './why-here.tsx'
import { ZoneChart } from './zone-chart.tsx'
import type { Bar } from './zone-days.ts'

export const DaysScreen = (props: ScreenProps) => {
  const { view, head, block } = props
  const { plan } = view
  const said = plan ? daysTitle(view, plan) : undefined
  return (
    <Sheet head={head} block={block} title={said?.title ?? labelOf('room.days')} say={said?.say}>
      {plan ? (
        <Planned {...props} plan={plan} />
      ) : (
        <Part label={labelOf('room.days')}>
          <Progress label={labelOf('frame.planning')} />
        </Part>
      )}
      <GiveWeather view={view} />
      <Crew view={view} />
    </Sheet>
  )
}

type PlannedProps = ScreenProps & { readonly plan: ShownPlan }

const Planned = (props: PlannedProps) => {
  const { view, plan, rest, go, href } = props
  const { words, nowMs, timeZone } = view
  const { ref, width } = useWidth<HTMLDivElement>()
  const from = isDate(rest) ? rest : startDate(plan, nowMs, timeZone)
  const narrow = width > 0 && width < 560
  const count = narrow ? 5 : daysFor(width)
  const to = (date: string): void => go(href(`days/${date}`))
  return (
    <div ref={ref} className="days-parts">
      {plan.days.placed.length === 0 ? (
        <Part label={labelOf('room.days')}>
          <Ghost kind="days">{words.sentence('daysscreen.none')}</Ghost>
        </Part>
      ) : (
        <>
          <Part title={labelOf('daysScreen.job')}>
            <JobStrip view={view} plan={plan} from={from} count={count} onFrom={to} />
          </Part>
          {width === 0 ? null : <Shown {...props} {...{ from, count, narrow }} onFrom={to} />}
        </>
      )}
      <Missing view={view} plan={plan} />
    </div>
  )
}

type ShownProps = PlannedProps & {
  readonly from: string
  readonly count: number
  readonly narrow: boolean
  readonly onFrom: (date: string) => void
}

/** The days between two dates: drawn where there is room, listed on a phone. */
const Shown = ({ view, plan, href, go, from, count, narrow, onFrom }: ShownProps) => {
  const { words, nowMs, timeZone } = view
  const { ref, width } = useWidth<HTMLDivElement>()
  const [chosen, setChosen] = useState<Bar>()
  const windows = useMemo(() => coatWindows(plan), [plan])
  const days = shownDays(from, count, timeZone)
  const today = localDate(Math.floor(nowMs / 60_000), timeZone)
  const list = <DayList view={view} plan={plan} days={days} href={href} go={go} />
  return (
    <>
      <Part
        title={words.sentence('daysscreen.weeks', { fromDate: from, toDate: days.at(-1)?.date ?? from })}
        action={<Turn from={from} count={count} today={today} onFrom={onFrom} />}
      >
        <div ref={ref}>
          {width === 0 ? null : narrow ? (
            list
          ) : (
            <ZoneChart {...{ view, plan, windows, days, width, chosen }} onChoose={setChosen} />
          )}
        </div>
        {narrow ? null : <Fold title={labelOf('daysScreen.table')}>{list}</Fold>}
        <Fold title={labelOf('daysScreen.weatherTable')}>
          <WeatherTable view={view} plan={plan} days={days} />
        </Fold>
      </Part>
      {narrow ? null : (
        <Part title={labelOf('daysScreen.why')}>
          <WhyHere key={`${chosen?.step} ${chosen?.fromMinute}`} {...{ view, plan, windows, bar: chosen }} />
        </Part>
      )}
    </>
  )
}

/** What finds no place and why, and the notes on hours and days. */
const Missing = ({ view, plan }: Pick<PlannedProps, 'view' | 'plan'>) => {
  const missing = unplacedSentences(view, plan)
  const notes = namedNotes(view, plan)
  if (missing.length + notes.length === 0) return null
  return (
    <Part label={labelOf('heading.notes')}>
      {missing.length === 0 ? null : (
        <PartBlock title={labelOf('daysScreen.unplaced')}>
          <ul className="days-unplaced">
            {missing.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </PartBlock>
      )}
      {sheetNotes(view, notes)}
    </Part>
  )
}

type TurnProps = {
  readonly from: string
  readonly count: number
  readonly today: string
  readonly onFrom: (date: string) => void
}

const Turn = ({ from, count, today, onFrom }: TurnProps) => (
  <div className="days-turn">
    <Button onClick={() => onFrom(addDays(from, -count))}>{labelOf('daysScreen.earlier')}</Button>
    <Button onClick={() => onFrom(addDays(from, count))}>{labelOf('daysScreen.later')}</Button>
    {from === today ? null : <Button onClick={() => onFrom(today)}>{labelOf('daysScreen.toNow')}</Button>}
    <DateField
      label={labelOf('daysScreen.from')}
      value={from}
      onCommit={(text) => {
        if (isDate(text)) onFrom(text)
      }}
    />
  </div>
)
