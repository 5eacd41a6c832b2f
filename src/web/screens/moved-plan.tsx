/** How the plan moved, in words: the last day first, then what was put in and what is at other hours. */
import type { StepText } from '#plan'
import { labelOf, type Words } from '#words'
import type { Moved, MovedStep } from '../job/how-it-moved.ts'
import { Ledger, NoteFlag } from '../parts/index.ts'
import './moved-plan.css'

/** More rows than these hide what else stands on the sheet. */
const usual = 8

export type MovedPlanProps = {
  readonly moved: Moved
  readonly words: Words
  readonly timeZone: string
  /** Number of the change, for its triangle. */
  readonly change: number
  /** Rows at most; the rest is counted. */
  readonly most?: number
}

export const MovedPlan = ({ moved, words, timeZone, change, most = usual }: MovedPlanProps) => {
  const time = (minute: number): string => words.moment(minute * 60_000, timeZone)
  const name = ({ code, data }: StepText): string => words.sentence(code, data)
  const rowOf = ({ step, text, fromMinute, toMinute }: MovedStep) => ({
    id: step,
    cells: {
      step: name(text),
      was: fromMinute === undefined ? labelOf('whatNow.new') : <s>{time(fromMinute)}</s>,
      is: <strong>{time(toMinute)}</strong>,
    },
  })
  const moreSteps = Math.max(0, moved.steps.length - most) + (moved.more?.steps ?? 0)
  return (
    <div className="moved-plan">
      <p className="moved-plan-end">
        <NoteFlag kind="change" mark={change} />
        <span>{words.sentence(...endSentence(moved))}</span>
      </p>
      {moved.lost.map(({ step, text }) => (
        <p key={step}>{words.sentence('whatnow.lost', { name: name(text) })}</p>
      ))}
      {moved.more?.lost ? <p>{words.sentence('whatnow.lostMore', { count: moved.more.lost })}</p> : null}
      {moved.gone.length === 0 ? null : (
        <p>
          {words.sentence('whatnow.gone', {
            names: moved.gone
              .slice(0, most)
              .map(({ text }) => name(text))
              .join('; '),
            more: Math.max(0, moved.gone.length - most) + (moved.more?.gone ?? 0),
          })}
        </p>
      )}
      {moved.steps.length === 0 ? null : (
        <Ledger
          caption={labelOf('whatNow.moved')}
          captionShown
          columns={[
            { key: 'step', label: labelOf('whatNow.step') },
            { key: 'was', label: labelOf('whatNow.was'), phone: 'second' },
            { key: 'is', label: labelOf('whatNow.is'), phone: 'second' },
          ]}
          rows={moved.steps.slice(0, most).map(rowOf)}
        />
      )}
      {moreSteps > 0 ? <p>{words.sentence('whatnow.more', { count: moreSteps })}</p> : null}
    </div>
  )
}

function endSentence({ launch, end }: Moved): readonly [string, Readonly<Record<string, number>>] {
  const last = launch ?? end
  if (last === undefined) return ['whatnow.endUnknown', {}]
  const data = { fromAtMs: last.fromMinute * 60_000, toAtMs: last.toMinute * 60_000 }
  if (last.fromMinute === last.toMinute) return ['whatnow.endStays', data]
  return [launch === undefined ? 'whatnow.endMoves' : 'whatnow.launchMoves', data]
}
