/** The tape of the day with its hours and now, and skin, dew and margin of one hour of it. */
import { labelOf } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { HoursKey, HoursStrip, NowLine, Part, TimeTape } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { airThen } from '../air-now.ts'
import { hourSpans } from '../hour-spans.ts'
import type { TodayState } from './today-state.ts'

type SkyPartProps = { readonly view: JobView; readonly plan: ShownPlan; readonly state: TodayState }

export const SkyPart = ({ view, plan, state }: SkyPartProps) => {
  const { words, timeZone, locale } = view
  const { hours, tape, nowMinute, isToday } = state
  const span = { fromMs: tape.fromMinute * 60_000, toMs: tape.toMinute * 60_000 }
  const spans = hours ? hourSpans(hours, tape) : []
  const nowMs = isToday && nowMinute < tape.toMinute ? nowMinute * 60_000 : undefined
  return (
    <Part label={labelOf('today.tape')}>
      <div className="today-tape">
        {hours ? <HoursStrip {...span} spans={spans} height={28} label={state.title} /> : null}
        <TimeTape
          {...span}
          timeZone={timeZone}
          locale={locale}
          every={2}
          nowMs={nowMs}
          label={labelOf('today.tape')}
        />
        {nowMs === undefined ? null : <NowLine {...span} nowMs={nowMs} overTape />}
      </div>
      {hours ? <HoursKey used={[...new Set(spans.map(({ kind }) => kind))]} /> : null}
      <Air view={view} plan={plan} state={state} />
      {state.reading === undefined ? null : (
        <p className="today-said">
          {words.sentence('todayscreen.read', {
            atClock: words.time(state.reading.atMs, timeZone),
            text: state.reading.text,
          })}
        </p>
      )}
    </Part>
  )
}

const Air = ({ view, plan, state }: SkyPartProps) => {
  const { words, timeZone } = view
  const air = airThen(plan, state.place, state.airMinute)
  if (!air) return <p className="today-said">{words.sentence('todayscreen.noWeather')}</p>
  const figures = [
    ['skin', labelOf('today.skin'), words.figure('surfaceC', air.surfaceC)],
    ['dew', labelOf('today.dew'), words.figure('dewC', air.dewC)],
    [
      'margin',
      state.leastK === undefined
        ? labelOf('today.margin')
        : words.sentence('todayscreen.needs', { leastK: state.leastK }),
      words.figure('marginK', air.marginK),
    ],
  ] as const
  return (
    <>
      <dl className="today-air">
        {figures.map(([of, name, text]) => (
          <div key={of}>
            <dt>{name}</dt>
            <dd>
              <WayFigure
                view={view}
                of={{ kind: 'air', place: state.place, minute: state.airMinute, of }}
                text={text}
                certainty="worked"
                size="part"
                label={name}
              />
            </dd>
          </div>
        ))}
      </dl>
      <p className="today-said">
        {words.sentence('todayscreen.at', { atClock: words.time(state.airMinute * 60_000, timeZone) })}
      </p>
    </>
  )
}
