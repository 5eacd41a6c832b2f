/** The rows of one day: a step each, planned or done by the log, in the order of the clock. */
import type { DayPiece, Pour } from '#plan'
import type { LogLine } from '../../job/job-view.ts'
import { linesInForce } from '../../job/tell-log.ts'
import type { ShownPlan } from '../../worker/messages.ts'

export type DayRow = DayPiece & {
  readonly done: boolean
  readonly pours: readonly Pour[]
}

export type DayAsked = { readonly plan: ShownPlan; readonly fromMinute: number; readonly toMinute: number }

export function dayRows({ plan, fromMinute, toMinute }: DayAsked): readonly DayRow[] {
  return plan.days.placed
    .flatMap((placed): readonly DayRow[] => {
      const pieces = placed.pieces
        .map((piece, index) => ({ ...piece, part: index + 1 }))
        .filter(({ startMinute }) => startMinute >= fromMinute && startMinute < toMinute)
      const [first, last] = [pieces[0], pieces.at(-1)]
      const base = { step: placed.step, done: placed.done, pours: poursOf(plan, placed.step) }
      if (first === undefined || last === undefined) {
        // Done by the log, it may have no piece of work at all.
        const within = placed.done && placed.endMinute >= fromMinute && placed.endMinute < toMinute
        if (!within) return []
        const { startMinute, endMinute } = placed
        return [{ ...base, startMinute, endMinute, people: [], part: 1, parts: 1, pours: [] }]
      }
      return [
        {
          ...base,
          startMinute: first.startMinute,
          endMinute: last.endMinute,
          people: [...new Set(pieces.flatMap(({ people }) => people))],
          part: first.part,
          parts: placed.pieces.length,
        },
      ]
    })
    .sort((a, b) => a.startMinute - b.startMinute || (a.step < b.step ? -1 : 1))
}

const poursOf = (plan: ShownPlan, step: string): readonly Pour[] =>
  plan.pours.pours.filter((pour) => pour.step === step)

/** The row under way: one that the log says is started, else the first that is not done and not over. */
export function rowInHand(rows: readonly DayRow[], begun: ReadonlySet<string>, nowMinute: number) {
  const open = rows.filter(({ done }) => !done)
  return (
    open.find(({ step }) => begun.has(step)) ?? open.find(({ endMinute }) => endMinute > nowMinute) ?? open[0]
  )
}

const turns: readonly string[] = ['started', 'done', 'not done', 'mishap']

/** What the log says last of each step: its kind. */
export function lastTurns(log: readonly LogLine[]): ReadonlyMap<string, string> {
  const told = linesInForce(log)
    .flatMap(({ id, cells }) => {
      const atMs = Date.parse(String(cells.at))
      const known = turns.includes(String(cells.kind)) && cells.step !== undefined && !Number.isNaN(atMs)
      // A coat that went wrong and stands is as far on as it was.
      const stands = cells.kind === 'mishap' && (cells.film === undefined || cells.film === 'stands')
      return known && !stands ? [{ id, atMs, step: String(cells.step), kind: String(cells.kind) }] : []
    })
    .sort((a, b) => a.atMs - b.atMs || (a.id < b.id ? -1 : 1))
  return new Map(told.map(({ step, kind }) => [step, kind]))
}

/** Hours of work of rows: minutes of every person, in hours. */
export const personHours = (rows: readonly DayRow[], plan: ShownPlan, within: DayAsked): number =>
  rows
    .flatMap(({ step }) => plan.days.placed.find((one) => one.step === step)?.pieces ?? [])
    .filter(({ startMinute }) => startMinute >= within.fromMinute && startMinute < within.toMinute)
    .reduce((sum, piece) => sum + ((piece.endMinute - piece.startMinute) * piece.people.length) / 60, 0)
