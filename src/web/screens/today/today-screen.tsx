/** Today: until when paint goes on, the step in hand with its pours, and the rows of the day to tick. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { addDays, isDate } from '../../job/local-days.ts'
import {
  Button,
  DateField,
  Ghost,
  LinkButton,
  Part,
  Progress,
  Sheet,
  type SheetHead,
} from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { PotClocks, type Pots, usePots } from '../pot/index.ts'
import type { ScreenProps } from '../screen.ts'
import { openSince } from './behind.ts'
import { CatchUp } from './catch-up.tsx'
import { HandPart } from './hand-part.tsx'
import { SkyPart } from './sky-part.tsx'
import { ThenPart } from './then-part.tsx'
import './today.css'
import { todayState } from './today-state.ts'

export const TodayScreen = (props: ScreenProps) => {
  const { view, rest, href, go, head, block } = props
  const { plan, words } = view
  const pots = usePots(view)
  const today = localDate(Math.floor(view.nowMs / 60_000), view.timeZone)
  const date = isDate(rest) ? rest : today
  const state = plan && todayState(view, plan, date)
  const trouble = (
    <LinkButton
      big
      href={href('what-now')}
      onClick={(event) => {
        event.preventDefault()
        go(href('what-now'))
      }}
    >
      {labelOf('today.whatNow')}
    </LinkButton>
  )
  return (
    <Sheet
      head={headOf(head, words.date(date))}
      block={block}
      title={state?.title ?? words.date(date)}
      say={state?.say ?? (plan ? undefined : words.sentence('todayscreen.noPlan'))}
      action={state?.hand ? undefined : trouble}
    >
      {plan && state ? (
        <Day view={view} plan={plan} state={state} pots={pots} trouble={trouble} />
      ) : (
        <Part label={labelOf('room.today')}>
          <Progress label={labelOf('frame.planning')} />
        </Part>
      )}
      <OtherDay date={date} today={today} onDate={(to) => go(href(to === today ? 'today' : `today/${to}`))} />
    </Sheet>
  )
}

type DayProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly state: ReturnType<typeof todayState>
  readonly pots: Pots
  readonly trouble: ReactNode
}

const Day = ({ view, plan, state, pots, trouble }: DayProps) => {
  const { hand, rows } = state
  const since = state.isToday ? openSince(view) : undefined
  const silent = since?.long === true
  const others = { ...pots, pots: pots.pots.filter(({ step }) => step !== hand?.step) }
  return (
    <>
      {silent ? <CatchUp view={view} since={since} silent /> : null}
      <SkyPart view={view} plan={plan} state={state} />
      <PotClocks view={view} pots={others} />
      {hand === undefined ? null : (
        <HandPart
          key={hand.step}
          view={view}
          plan={plan}
          state={state}
          row={hand}
          pots={pots}
          trouble={trouble}
        />
      )}
      {rows.length === 0 ? (
        <Part label={labelOf('room.today')}>
          <Ghost kind="days">{state.say}</Ghost>
        </Part>
      ) : (
        <ThenPart view={view} plan={plan} state={state}>
          {since === undefined || silent ? null : <CatchUp view={view} since={since} />}
        </ThenPart>
      )}
    </>
  )
}

/** On a phone the head says which day it is, and which boat. */
const headOf = ({ title, aside }: SheetHead, day: string): SheetHead => ({
  title: day,
  aside: (
    <>
      {title}
      <br />
      {aside}
    </>
  ),
})

type OtherDayProps = {
  readonly date: string
  readonly today: string
  readonly onDate: (date: string) => void
}

const OtherDay = ({ date, today, onDate }: OtherDayProps) => (
  <Part title={labelOf('today.other')}>
    <div className="today-other">
      <Button onClick={() => onDate(addDays(date, -1))}>{labelOf('today.before')}</Button>
      <Button onClick={() => onDate(addDays(date, 1))}>{labelOf('today.after')}</Button>
      <DateField
        label={labelOf('today.date')}
        value={date}
        onCommit={(text) => {
          if (isDate(text)) onDate(text)
        }}
      />
      {date === today ? null : <Button onClick={() => onDate(today)}>{labelOf('today.toToday')}</Button>}
    </div>
  </Part>
)
