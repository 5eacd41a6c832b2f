/** Days: hours, weather and work of some days on one tape, why work stands where it stands, what changed, and the week on paper. */
import { useMemo, useState } from 'react'
import { type CoatWindow, coatWindows } from '#plan'
import { labelOf } from '#words'
import { Fold } from '../../fields/cells.tsx'
import { localDate } from '../../job/local-date.ts'
import { isDate } from '../../job/local-days.ts'
import {
  Button,
  Dialog,
  Ghost,
  Part,
  PartBlock,
  PartRow,
  Progress,
  Sheet,
  useWidth,
} from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import { TakeReading } from '../today/take-reading.tsx'
import { ChangedPart, type RainWasTold } from './changed-part.tsx'
import { type Chosen, keyOf } from './chosen.ts'
import { Crew } from './crew.tsx'
import './days.css'
import './days-paper.css'
import './days-upright.css'
import { DayList } from './day-list.tsx'
import { daysTitle, namedNotes, unplacedSentences } from './days-title.ts'
import { GiveLogger } from './give-logger.tsx'
import { GiveWeather } from './give-weather.tsx'
import { HeatPart } from './heat-part.tsx'
import { JobStrip } from './job-strip.tsx'
import { PrintedWeek } from './printed-week.tsx'
import { RainDialog } from './rain-dialog.tsx'
import { daysFor, shownDays, startDate } from './shown-days.ts'
import { Turn } from './turn.tsx'
import { UprightChart } from './upright-chart.tsx'
import { usePrinting } from './use-printing.ts'
import { WeatherTable } from './weather-table.tsx'
import { WhereSheStands } from './where-she-stands.tsx'
import { WhyHere } from './why-here.tsx'
import { ZoneChart } from './zone-chart.tsx'

export const DaysScreen = (props: ScreenProps) => {
  const { view, head, block } = props
  const { plan, readOnly } = view
  const said = plan ? daysTitle(view, plan) : undefined
  const [asking, setAsking] = useState(false)
  const [reading, setReading] = useState(false)
  const [told, setTold] = useState<RainWasTold>()
  return (
    <Sheet
      head={head}
      block={block}
      title={said?.title ?? labelOf('room.days')}
      say={said?.say}
      action={
        plan ? (
          <>
            <Button onClick={() => globalThis.print()}>{labelOf('daysScreen.print')}</Button>
            <Button disabled={readOnly} onClick={() => setReading(true)}>
              {labelOf('daysScreen.readInYard')}
            </Button>
            <Button next disabled={readOnly} onClick={() => setAsking(true)}>
              {labelOf('daysScreen.itRained')}
            </Button>
          </>
        ) : undefined
      }
    >
      {plan ? (
        <Planned {...props} plan={plan} told={told} />
      ) : (
        <Part label={labelOf('room.days')}>
          <Progress label={labelOf('frame.planning')} />
        </Part>
      )}
      <div className="days-parts off-paper">
        <GiveWeather view={view} />
        {plan ? <WhereSheStands view={view} plan={plan} /> : null}
        {plan ? <GiveLogger view={view} /> : null}
        <Crew view={view} />
      </div>
      {reading ? (
        <TakeReading
          view={view}
          of={{}}
          leastK={undefined}
          sides={plan?.conditions.air.find(({ key }) => key === 'boat')?.shelter === 'open'}
          onClose={() => setReading(false)}
        />
      ) : null}
      {plan && asking ? (
        <RainDialog
          view={view}
          plan={plan}
          onClose={() => setAsking(false)}
          onTold={() => {
            setAsking(false)
            setTold({ over: plan, atMs: Date.now() })
          }}
        />
      ) : null}
    </Sheet>
  )
}

type PlannedProps = ScreenProps & { readonly plan: ShownPlan; readonly told: RainWasTold | undefined }

const Planned = (props: PlannedProps) => {
  const { view, plan, rest, go, href } = props
  const { nowMs, timeZone, words } = view
  const { ref, width } = useWidth<HTMLDivElement>()
  const windows = useMemo(() => coatWindows(plan), [plan])
  const printing = usePrinting()
  const from = isDate(rest) ? rest : startDate(plan, nowMs, timeZone)
  const narrow = width > 0 && width < 560
  const shown = { from, count: daysFor(width), onFrom: (date: string) => go(href(`days/${date}`)) }
  const empty = plan.days.placed.length === 0
  return (
    <>
      {printing && !empty ? <PrintedWeek {...{ view, plan, windows, from }} /> : null}
      <div ref={ref} className={empty ? 'days-parts' : 'days-parts off-paper'}>
        {empty ? (
          <Part label={labelOf('room.days')}>
            <Ghost kind="days">{words.sentence('daysscreen.none')}</Ghost>
          </Part>
        ) : (
          <>
            <Part title={labelOf('daysScreen.job')}>
              <JobStrip view={view} plan={plan} {...shown} />
            </Part>
            {width === 0 ? null : narrow ? (
              <Phone {...props} {...shown} windows={windows} />
            ) : (
              <Wide {...props} {...shown} windows={windows} />
            )}
          </>
        )}
        <Missing view={view} plan={plan} />
      </div>
    </>
  )
}

type ShownProps = PlannedProps & {
  readonly from: string
  readonly count: number
  readonly onFrom: (date: string) => void
  readonly windows: readonly CoatWindow[]
}

/** The days on a tape that lies, all zones under it. */
const Wide = (props: ShownProps) => {
  const { view, plan, told, from, count, windows } = props
  const { ref, width } = useWidth<HTMLDivElement>()
  const [chosen, setChosen] = useState<Chosen>()
  const days = shownDays(from, count, view.timeZone)
  return (
    <>
      <Part title={daysText(view, days)} action={<TurnTo {...props} />}>
        <div ref={ref}>
          {width === 0 ? null : (
            <ZoneChart {...{ view, plan, windows, days, width, chosen }} onChoose={setChosen} />
          )}
        </div>
        <Tables {...props} days={days} />
      </Part>
      <HeatPart {...{ view, plan, chosen }} within={spanOf(days)} onChoose={setChosen} />
      <PartRow>
        <Part title={labelOf('daysScreen.why')}>
          <WhyHere key={keyOf(chosen)} {...{ view, plan, windows, chosen }} onChoose={setChosen} />
        </Part>
        <ChangedPart view={view} told={told} />
      </PartRow>
    </>
  )
}

/** One zone at a time on a tape that stands; why is said over it. */
const Phone = (props: ShownProps) => {
  const { view, plan, told, from, count, windows } = props
  const [chosen, setChosen] = useState<Chosen>()
  const [zone, setZone] = useState<string>()
  const days = shownDays(from, count, view.timeZone)
  const close = (): void => setChosen(undefined)
  return (
    <>
      {told || view.moves.length > 0 ? <ChangedPart view={view} told={told} short /> : null}
      <Part title={daysText(view, days)} action={<TurnTo {...props} />}>
        <UprightChart
          {...{ view, plan, windows, days, chosen, zone }}
          onZone={setZone}
          onChoose={setChosen}
        />
        <Tables {...props} days={days} />
      </Part>
      <HeatPart {...{ view, plan, chosen }} within={spanOf(days)} onChoose={setChosen} />
      {chosen === undefined ? null : (
        <Dialog
          title={labelOf('daysScreen.why')}
          onClose={close}
          actions={
            <Button next onClick={close}>
              {labelOf('daysScreen.close')}
            </Button>
          }
        >
          <WhyHere key={keyOf(chosen)} {...{ view, plan, windows, chosen }} onChoose={setChosen} />
        </Dialog>
      )}
    </>
  )
}

type Days = ReturnType<typeof shownDays>

const spanOf = (days: Days): Minutes => ({
  fromMinute: days[0]?.fromMinute ?? 0,
  toMinute: days.at(-1)?.toMinute ?? 0,
})

const daysText = ({ words }: ScreenProps['view'], days: Days): string =>
  words.sentence('daysscreen.weeks', { fromDate: days[0]?.date ?? '', toDate: days.at(-1)?.date ?? '' })

const TurnTo = ({ view, from, count, onFrom }: ShownProps) => (
  <Turn {...{ from, count, onFrom }} today={localDate(Math.floor(view.nowMs / 60_000), view.timeZone)} />
)

/** What the drawing says, as tables. */
const Tables = ({ view, plan, href, go, days }: ShownProps & { readonly days: Days }) => (
  <>
    <Fold title={labelOf('daysScreen.table')}>
      <DayList view={view} plan={plan} days={days} href={href} go={go} />
    </Fold>
    <Fold title={labelOf('daysScreen.weatherTable')}>
      <WeatherTable view={view} plan={plan} days={days} />
    </Fold>
  </>
)

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
