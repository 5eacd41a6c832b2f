/** Whether a run can be laid wet by who is there, and if not, what would do: each in its own figure. */
import { mostPours, type PotClock, poursNeeded, workingMinutes } from './chain-pours.ts'

export type Crew = {
  readonly people: number
  /** m² in a minute. */
  readonly pace: number
  /** min that nobody lays paint while a pour is mixed in the middle of a run; 0 where another one mixes. */
  readonly break: number
  /** m² that a run may have. */
  readonly most: number
}

export type RunInput = {
  /** m² */
  readonly area: number
  /** min */
  readonly start: number
  readonly lead: number
  /** How long a wet edge takes the next section without a mark, min; infinite where no lap shows. */
  readonly wetEdge: number
  /** A pour that chains into another has to be laid for longer than this, min. */
  readonly leastWork: number
  readonly potAt: (minute: number) => PotClock
}

export type RunFault = 'pot' | 'edge' | 'width'

/**
 * Why a run cannot be laid wet: `pot`, it gives no time, or too little for one pour to chain into the next; `width`,
 * it is more than so few can do; `edge`, it takes more pours than one, and mixing the next keeps the roller from the
 * wet edge for too long.
 */
export function runFault(run: RunInput, crew: Crew): RunFault | undefined {
  const pours = poursNeeded(run, { minutes: run.area / crew.pace, at: run.start })
  if (pours === undefined) return 'pot'
  if (pours > 1 && workingMinutes(run.potAt(run.start), run.lead) <= run.leastWork) return 'pot'
  if (run.area > crew.most) return 'width'
  return pours > 1 && crew.break > run.wetEdge ? 'edge' : undefined
}

export type RunRemedies = {
  /** A run of this many m² would do, for those who are there; 0 where the pot gives no time at all. */
  readonly area: number
  /** So many runs of it then. */
  readonly pieces: number
  /** A pot that lasts so long does: min at the hour of the run. */
  readonly life: number
  /** With another pair of hands: minutes and pours; absent where they do not help either. */
  readonly pair?: { readonly minutes: number; readonly pours: number }
}

/**
 * What would make a run possible, each by itself.
 * Equations: where pours may chain, area = most, and life = induction + lead + twice the lead; where they may
 * not, one pot has to do: area = pace × work with work = life − induction − lead, and life = induction + lead +
 * area / pace.
 */
export function runRemedies(run: RunInput, crews: { readonly now: Crew; readonly pair?: Crew }): RunRemedies {
  const { now, pair } = crews
  const pot = run.potAt(run.start)
  const work = workingMinutes(pot, run.lead)
  const mayWait = now.break <= run.wetEdge
  const onePot = Math.max(0, work) * now.pace
  const area = Math.min(now.most, run.area, mayWait && work > run.leastWork ? run.area : onePot)
  const minutes = Math.min(run.area, now.most) / now.pace
  const needed = mayWait ? Math.max(minutes / mostPours, Math.min(minutes, 2 * run.lead)) : minutes
  return {
    area,
    pieces: area > 0 ? Math.ceil(run.area / area - 1e-9) : 0,
    life: pot.induction + run.lead + needed,
    ...(pair && runFault(run, pair) === undefined ? { pair: pairOf(run, pair) } : {}),
  }
}

function pairOf(run: RunInput, { pace }: Crew): NonNullable<RunRemedies['pair']> {
  const minutes = run.area / pace
  return { minutes, pours: poursNeeded(run, { minutes, at: run.start }) ?? 1 }
}

/**
 * The warmest whole degree at or under the present one at which a pot lasts so long.
 * @returns °C, or undefined where none down to `least` will do.
 */
export function airThatDoes(asked: {
  readonly life: number
  /** °C of the hour, and the coldest that the product takes. */
  readonly from: number
  readonly least: number
  /** Induction and life at °C, min. */
  readonly potIn: (airC: number) => PotClock
  /** What the life has to cover besides the induction of the hour. */
  readonly induction: number
}): number | undefined {
  const { life, from, least, potIn, induction } = asked
  for (let airC = Math.floor(from); airC >= least; airC--) {
    const pot = potIn(airC)
    if (pot.life - pot.induction >= life - induction) return airC
  }
  return undefined
}
