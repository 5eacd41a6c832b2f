/** How the plan moved: the last day first, then what was put in and what is at other hours. */
import { describeStep } from '#plan'
import { labelOf, type Words } from '#words'
import { Ledger, NoteFlag } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { howItMoved, type Moved, type MovedStep } from './how-it-moved.ts'

const shown = 8

export type MovedPlanProps = {
  readonly was: ShownPlan
  readonly is: ShownPlan
  readonly words: Words
  /** Number of the change, for its triangle. */
  readonly change: number
}

export const MovedPlan = ({ was, is, words, change }: MovedPlanProps) => {
  const moved = howItMoved(was, is)
  const time = (minute: number): string => words.moment(minute * 60_000, is.days.timeZone)
  const name = (step: string): string => {
    const { code, data } = describeStep(is, step)
    return words.sentence(code, data)
  }
  const rowOf = ({ step, fromMinute, toMinute }: MovedStep) => ({
    id: step,
    cells: {
      step: name(step),
      was: fromMinute === undefined ? labelOf('whatNow.new') : <s>{time(fromMinute)}</s>,
      is: <strong>{time(toMinute)}</strong>,
    },
  })
  return (
    <>
      <p className="what-now-end">
        <NoteFlag kind="change" mark={change} /> {words.sentence(...endSentence(moved))}
      </p>
      {moved.lost.map((step) => (
        <p key={step}>{words.sentence('whatnow.lost', { name: name(step) })}</p>
      ))}
      {moved.steps.length === 0 ? null : (
        <Ledger
          caption={labelOf('whatNow.moved')}
          captionShown
          columns={[
            { key: 'step', label: labelOf('whatNow.step') },
            { key: 'was', label: labelOf('whatNow.was'), phone: 'second' },
            { key: 'is', label: labelOf('whatNow.is'), phone: 'second' },
          ]}
          rows={moved.steps.slice(0, shown).map(rowOf)}
        />
      )}
      {moved.steps.length > shown ? (
        <p>{words.sentence('whatnow.more', { count: moved.steps.length - shown })}</p>
      ) : null}
    </>
  )
}

function endSentence({ launch, end }: Moved): readonly [string, Readonly<Record<string, number>>] {
  const last = launch ?? end
  if (last === undefined) return ['whatnow.endUnknown', {}]
  const data = { fromAtMs: last.fromMinute * 60_000, toAtMs: last.toMinute * 60_000 }
  if (last.fromMinute === last.toMinute) return ['whatnow.endStays', data]
  return [launch === undefined ? 'whatnow.endMoves' : 'whatnow.launchMoves', data]
}
