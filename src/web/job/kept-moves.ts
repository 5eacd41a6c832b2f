/** What the last plans moved, kept on the device so that a reload does not forget it; a few rows of each. */
import type { StepText } from '#plan'
import type { Moved, MovedStep, Named } from './how-it-moved.ts'
import { mostMoves, type PlanMove } from './plan-move.ts'

export type MoveShelf = Pick<Storage, 'getItem' | 'setItem'>

/** As many as a sheet shows of each; the rest is counted. */
const mostRows = 12
/** Nobody asks any more what moved a month ago. */
const oldestMs = 30 * 24 * 3_600_000

const placeOf = (jobId: string): string => `hardstand.moves.${jobId}`

/** The newest first. Reading is total: what is no move is left out. */
export function readMoves(shelf: MoveShelf | undefined, jobId: string, nowMs: number): readonly PlanMove[] {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(placeOf(jobId)) ?? '[]')
    if (!Array.isArray(kept)) return []
    return kept
      .flatMap((one) => moveFrom(one) ?? [])
      .filter(({ atMs }) => nowMs - atMs < oldestMs)
      .slice(0, mostMoves)
  } catch {
    return []
  }
}

/** Where the browser keeps nothing they last as long as the page. */
export function writeMoves(shelf: MoveShelf | undefined, jobId: string, moves: readonly PlanMove[]): void {
  try {
    const kept = moves.slice(0, mostMoves).map((move) => ({ ...move, moved: shortened(move.moved) }))
    shelf?.setItem(placeOf(jobId), JSON.stringify(kept))
  } catch {
    // Only a look back: the plan itself is not touched by it.
  }
}

function shortened({ steps, lost, gone, more, ...ends }: Moved): Moved {
  const cut = <One>(rows: readonly One[]): readonly One[] => rows.slice(0, mostRows)
  const left = (rows: readonly unknown[], before = 0): number => before + Math.max(0, rows.length - mostRows)
  return {
    ...ends,
    steps: cut(steps),
    lost: cut(lost),
    gone: cut(gone),
    more: { steps: left(steps, more?.steps), lost: left(lost, more?.lost), gone: left(gone, more?.gone) },
  }
}

type Raw = Readonly<Record<string, unknown>>

const isMap = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isFigure = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value)
const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && Number(value) >= 0

const causes: readonly unknown[] = ['edit', 'elsewhere', 'log', 'weather'] satisfies PlanMove['by'][]

function moveFrom(one: unknown): PlanMove | undefined {
  if (!isMap(one) || !isMap(one.moved)) return undefined
  const { number, atMs, by } = one
  const moved = movedFrom(one.moved)
  if (!moved || !isCount(number) || !isFigure(atMs) || !causes.includes(by)) return undefined
  return { moved, number, atMs, by: by as PlanMove['by'] }
}

function movedFrom({ launch, end, steps, lost, gone, more }: Raw): Moved | undefined {
  const [someSteps, someLost, someGone] = [
    rowsOf(steps, stepFrom),
    rowsOf(lost, namedFrom),
    rowsOf(gone, namedFrom),
  ]
  if (!someSteps || !someLost || !someGone) return undefined
  return {
    ...pair('launch', launch),
    ...pair('end', end),
    steps: someSteps,
    lost: someLost,
    gone: someGone,
    ...(isMap(more) && isCount(more.steps) && isCount(more.lost) && isCount(more.gone)
      ? { more: { steps: more.steps, lost: more.lost, gone: more.gone } }
      : {}),
  }
}

function rowsOf<One>(rows: unknown, from: (one: unknown) => One | undefined): readonly One[] | undefined {
  return Array.isArray(rows) ? rows.slice(0, mostRows).flatMap((one) => from(one) ?? []) : undefined
}

function pair<Key extends 'launch' | 'end'>(key: Key, value: unknown) {
  if (!isMap(value) || !isFigure(value.fromMinute) || !isFigure(value.toMinute)) return {}
  return { [key]: { fromMinute: value.fromMinute, toMinute: value.toMinute } }
}

function namedFrom(one: unknown): Named | undefined {
  if (!isMap(one) || typeof one.step !== 'string' || !isMap(one.text)) return undefined
  const { code, data } = one.text
  if (typeof code !== 'string' || !isMap(data)) return undefined
  return { step: one.step, text: { code, data: Object.fromEntries(Object.entries(data).filter(isPlain)) } }
}

type Plain = StepText['data'][string]

const isPlain = (entry: readonly [string, unknown]): entry is [string, Plain] =>
  ['string', 'number', 'boolean'].includes(typeof entry[1])

function stepFrom(one: unknown): MovedStep | undefined {
  const named = namedFrom(one)
  if (!named || !isMap(one) || !isFigure(one.toMinute)) return undefined
  const { fromMinute, toMinute } = one
  return isFigure(fromMinute) ? { ...named, fromMinute, toMinute } : { ...named, toMinute }
}
