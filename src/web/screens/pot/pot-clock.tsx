/** The clock of one pour: "Mixed now" starts it, then until when it may be used, in figures read from two metres. */
import { describeStep, type Pour } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Button, CautionPanel, FigureText, PotBar } from '../../parts/index.ts'
import { type Pot, type PotState, potOf, potState, samePot } from './pot-clock.ts'
import './pot.css'
import { useNow } from './use-now.ts'
import type { Pots } from './use-pots.ts'
import { useWakeLock } from './use-wake-lock.ts'

export type PotClockProps = {
  readonly pour: Pour
  readonly view: Pick<JobView, 'plan' | 'words' | 'timeZone'>
  /** Of `usePots`, once a screen: every clock of it shares them. */
  readonly pots: Pots
  /** The next thing to do on its sheet: its button is filled. */
  readonly next?: boolean
  /** Worded, instead of step and pour. */
  readonly title?: string
  /** Why it cannot be mixed now, in place of the button. */
  readonly notNow?: string | undefined
}

export const PotClock = ({ pour, view, pots, title, notNow, next = false }: PotClockProps) => {
  const pot = pots.pots.find((one) => samePot(one, pour))
  const nowMs = useNow(pot !== undefined)
  const awake = useWakeLock(pot !== undefined)
  const { words } = view
  return (
    <article className="pot" aria-label={title ?? nameOf(pour, view)}>
      <h3 className="pot-name">{title ?? nameOf(pour, view)}</h3>
      {pot === undefined ? (
        <NotMixed {...{ pour, words, next, notNow }} onMix={() => pots.mix(pour)} />
      ) : (
        <Running pot={pot} state={potState(pot, nowMs)} view={view} onEmpty={() => pots.empty(pot)} />
      )}
      {awake === 'cannot' ? <p className="pot-said">{words.sentence('pot.cannotWake')}</p> : null}
      {pots.lasts ? null : <p className="pot-said">{words.sentence('pot.notKept')}</p>}
    </article>
  )
}

type NotMixedProps = {
  readonly pour: Pour
  readonly words: JobView['words']
  readonly next: boolean
  readonly notNow: string | undefined
  readonly onMix: () => void
}

const NotMixed = ({ pour, words, next, notNow, onMix }: NotMixedProps) => {
  const { lifeMinutes } = potOf(pour, 0)
  return (
    <>
      <p className="pot-said">
        {lifeMinutes === undefined
          ? words.sentence('pot.noLife')
          : `${words.sentence('pot.life', { lifeMinutes })} ${words.sentence('pot.atWarmth', { airC: pour.airC })}`}
      </p>
      {notNow === undefined ? (
        <Button big next={next} onClick={onMix}>
          {labelOf('pot.mixed')}
        </Button>
      ) : (
        <p>{notNow}</p>
      )}
    </>
  )
}

type RunningProps = {
  readonly pot: Pot
  readonly state: PotState
  readonly view: PotClockProps['view']
  readonly onEmpty: () => void
}

const Running = ({ pot, state, view, onEmpty }: RunningProps) => {
  const { words, timeZone } = view
  const { kind, untilMs, leftMinutes = 0, usedShare = 0 } = state
  const left = words.sentence('pot.left', { leftMinutes, lifeMinutes: pot.lifeMinutes ?? 0 })
  return (
    <>
      {untilMs === undefined ? (
        <p>{words.sentence('pot.noLife')}</p>
      ) : (
        <>
          <div className="pot-figures">
            <div>
              <span className="pot-label">{labelOf(kind === 'over' ? 'pot.timeOut' : 'pot.useUntil')}</span>
              <FigureText text={words.time(untilMs, timeZone)} certainty="worked" size="clock" />
            </div>
            <span className="pot-left">
              <FigureText text={words.figure('leftMinutes', leftMinutes)} certainty="worked" size="mix" />{' '}
              {labelOf('pot.leftWord')}
            </span>
          </div>
          <PotBar usedShare={usedShare} label={left} />
        </>
      )}
      <div role="alert">{warning(state, { words, timeZone })}</div>
      <Button big next={kind === 'over'} onClick={onEmpty}>
        {labelOf(kind === 'over' ? 'pot.away' : 'pot.emptied')}
      </Button>
      {kind === 'over' || untilMs === undefined ? null : (
        <p className="pot-said">{words.sentence('pot.atWarmth', { airC: pot.airC })}</p>
      )}
    </>
  )
}

/** In words, and read out when it turns. */
function warning(
  { kind, fromMs, untilMs }: PotState,
  { words, timeZone }: Pick<JobView, 'words' | 'timeZone'>,
) {
  const at = (ms: number | undefined): string => (ms === undefined ? '' : words.time(ms, timeZone))
  if (kind === 'over')
    return (
      <CautionPanel signal="warning">{words.sentence('pot.over', { untilClock: at(untilMs) })}</CautionPanel>
    )
  if (kind === 'last') return <CautionPanel signal="caution">{words.sentence('pot.last')}</CautionPanel>
  if (kind === 'stands')
    return <p className="pot-stands">{words.sentence('pot.induction', { fromClock: at(fromMs) })}</p>
  return null
}

function nameOf(pour: Pour, { plan, words }: PotClockProps['view']): string {
  const pot = `${labelOf('pot.pour')} ${pour.nr} ${labelOf('pot.of')} ${pour.of}`
  if (plan === undefined) return pot
  const { code, data } = describeStep(plan, pour.step)
  return `${words.sentence(code, data)}: ${pot.toLowerCase()}`
}
