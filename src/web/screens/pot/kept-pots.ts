/** Pots that are running, kept on the device so that a reload does not stop their clocks. */
import { type Pot, samePot } from './pot-clock.ts'

export type PotShelf = Pick<Storage, 'getItem' | 'setItem'>

/** More than anybody mixes at once. */
const most = 20
/** A pot of yesterday is nobody's any more. */
const oldestMs = 24 * 3_600_000

const placeOf = (jobId: string): string => `hardstand.pots.${jobId}`

/** Reading is total: what is no pot is left out. */
export function readPots(shelf: PotShelf | undefined, jobId: string, nowMs: number): readonly Pot[] {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(placeOf(jobId)) ?? '[]')
    if (!Array.isArray(kept)) return []
    return kept
      .flatMap((one) => potFrom(one) ?? [])
      .filter(({ mixedMs }) => nowMs - mixedMs < oldestMs)
      .slice(-most)
  } catch {
    return []
  }
}

/** False when the browser keeps nothing. */
export function writePots(shelf: PotShelf | undefined, jobId: string, pots: readonly Pot[]): boolean {
  try {
    shelf?.setItem(placeOf(jobId), JSON.stringify(pots))
    return shelf !== undefined
  } catch {
    return false
  }
}

/** The same pour mixed anew takes the place of its last pot. */
export const withPot = (pots: readonly Pot[], pot: Pot): readonly Pot[] =>
  [...pots.filter((one) => !samePot(one, pot)), pot].slice(-most)

export const withoutPot = (pots: readonly Pot[], gone: Pick<Pot, 'step' | 'nr'>): readonly Pot[] =>
  pots.filter((one) => !samePot(one, gone))

function potFrom(one: unknown): Pot | undefined {
  if (typeof one !== 'object' || one === null) return undefined
  const { step, nr, of, mixedMs, standMinutes, lifeMinutes, airC } = one as Readonly<Record<string, unknown>>
  if (typeof step !== 'string' || step === '') return undefined
  if (!isCount(nr) || !isCount(of) || !isFigure(mixedMs) || !isFigure(standMinutes) || !isFigure(airC))
    return undefined
  if (lifeMinutes !== undefined && (!isFigure(lifeMinutes) || lifeMinutes < 0)) return undefined
  return { step, nr, of, mixedMs, standMinutes, airC, ...(lifeMinutes === undefined ? {} : { lifeMinutes }) }
}

const isFigure = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value)
const isCount = (value: unknown): value is number => isFigure(value) && Number.isInteger(value) && value > 0
