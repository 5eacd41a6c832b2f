/** The clock of a mixed pot: from when to when it may be used, and how that stands now. */
import type { Pour } from '#plan'

/** Kept as it was when the pot was mixed: planning again does not turn a running clock. */
export type Pot = {
  readonly step: string
  readonly nr: number
  readonly of: number
  readonly mixedMs: number
  /** From mixing until it may be used. */
  readonly standMinutes: number
  /** From mixing until it must be used up; none where the sheet gives no pot life. */
  readonly lifeMinutes?: number
  readonly airC: number
}

export type PotState = {
  readonly kind: 'stands' | 'good' | 'last' | 'over' | 'open'
  readonly fromMs: number
  readonly untilMs?: number
  /** Whole minutes, rounded down: nobody is told of a minute that is not there. */
  readonly leftMinutes?: number
  /** 0 to 1 of the pot life. */
  readonly usedShare?: number
}

const minute = 60_000
/** The last tenth of the pot life. */
const lastShare = 0.9

export const potOf = (pour: Pour, mixedMs: number): Pot => ({
  step: pour.step,
  nr: pour.nr,
  of: pour.of,
  mixedMs,
  standMinutes: Math.max(0, pour.useFromMinute - pour.mixAtMinute),
  ...(pour.useUntilMinute === undefined ? {} : { lifeMinutes: pour.useUntilMinute - pour.mixAtMinute }),
  airC: pour.airC,
})

export function potState(pot: Pot, nowMs: number): PotState {
  const fromMs = pot.mixedMs + pot.standMinutes * minute
  const stands = nowMs < fromMs
  if (pot.lifeMinutes === undefined) return { kind: stands ? 'stands' : 'open', fromMs }
  const untilMs = pot.mixedMs + pot.lifeMinutes * minute
  // A clock that was set back does not give a pot more than its life.
  const leftMs = Math.min(Math.max(0, untilMs - nowMs), pot.lifeMinutes * minute)
  const usedShare = pot.lifeMinutes <= 0 ? 1 : 1 - leftMs / (pot.lifeMinutes * minute)
  return {
    kind: leftMs <= 0 ? 'over' : usedShare >= lastShare ? 'last' : stands ? 'stands' : 'good',
    fromMs,
    untilMs,
    leftMinutes: Math.floor(leftMs / minute),
    usedShare,
  }
}

export const samePot = (one: Pick<Pot, 'step' | 'nr'>, other: Pick<Pot, 'step' | 'nr'>): boolean =>
  one.step === other.step && one.nr === other.nr
