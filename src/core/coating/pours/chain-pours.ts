/** The runs of a coat as pours that chain wet into wet: from when to when each is laid, and on what. */

/** A run of wet film: from one place where a lap hides to the next. */
export type Run = {
  /** m² */
  readonly area: number
}

/** What a pot does that is first used at a minute. */
export type PotClock = {
  /** min from mixing until it may be used. */
  readonly induction: number
  /** min from mixing until it may no longer be used; infinite for paint that needs no hardener. */
  readonly life: number
}

export type ChainInput = {
  readonly runs: readonly Run[]
  /** When the first paint goes on, min. */
  readonly start: number
  /** m² in a minute. */
  readonly pace: number
  /** Mixing, and pouring out: the pour is mixed so long before it stands, min. */
  readonly lead: number
  /** Of a pour that is first used at this minute. */
  readonly potAt: (minute: number) => PotClock
}

/** A piece of a run that one pour covers; area in m². */
export type Stretch = { readonly run: number; readonly area: number }

export type ChainedPour = PotClock & {
  /** min: when mixing begins, from when it is laid, when the last of it is, and when it is over; may be infinite. */
  readonly mixAt: number
  readonly from: number
  readonly end: number
  readonly until: number
  readonly stretches: readonly Stretch[]
  /** It goes on wet into the pour before it, in the middle of a run. */
  readonly intoWet: boolean
}

/** More pours than this for one run are no way to lay it. */
export const mostPours = 60

/** Working minutes of a pot: pot life less induction less mixing and pouring out. */
export const workingMinutes = ({ induction, life }: PotClock, lead: number): number => life - induction - lead

/**
 * Whole runs share a pour as long as it lasts through them; a run that is longer than its pot is laid in as few even
 * pours as will do, each within its own working time at the hour it begins, with no break between them. A pour ends
 * where a run ends, wherever that can be. Where the pot gives a run no time, the run is one pour and `end` is past
 * `until`.
 */
export function chainPours(input: ChainInput): readonly ChainedPour[] {
  const pours: ChainedPour[] = []
  let at = input.start
  for (let run = 0; run < input.runs.length; ) {
    const together = runsOfOnePot(input, run, at)
    const next =
      together > 0
        ? [pourAt(input, { from: at, stretches: wholeRuns(input, run, together), intoWet: false })]
        : splitRun(input, run, at)
    pours.push(...next)
    at = next.at(-1)!.end
    run += Math.max(1, together)
  }
  return pours
}

/** Rounding of sums of minutes is no reason for one more pour. */
const slack = 1e-9

/** How many whole runs from this one on the pot of this minute lasts through. */
function runsOfOnePot({ runs, pace, lead, potAt }: ChainInput, first: number, at: number): number {
  const most = workingMinutes(potAt(at), lead)
  let minutes = 0
  let count = 0
  for (const { area } of runs.slice(first)) {
    minutes += area / pace
    if (minutes > most + slack) break
    count++
  }
  return count
}

const wholeRuns = ({ runs }: ChainInput, first: number, count: number): readonly Stretch[] =>
  runs.slice(first, first + count).map(({ area }, index) => ({ run: first + index, area }))

/** One run in even pours, as few as will do. */
function splitRun(input: ChainInput, run: number, at: number): readonly ChainedPour[] {
  const { area } = input.runs[run]!
  const minutes = area / input.pace
  const of = poursNeeded(input, { minutes, at }) ?? 1
  return Array.from({ length: of }, (_, index) =>
    pourAt(input, {
      from: at + (index * minutes) / of,
      stretches: [{ run, area: area / of }],
      intoWet: index > 0,
    }),
  )
}

/** In how few even pours work can be done that begins at a minute; undefined where no number will do. */
export function poursNeeded(
  { lead, potAt }: Pick<ChainInput, 'lead' | 'potAt'>,
  { minutes, at }: { readonly minutes: number; readonly at: number },
): number | undefined {
  for (let of = 1; of <= mostPours; of++) {
    const each = minutes / of
    const lasts = (_: unknown, index: number): boolean =>
      workingMinutes(potAt(at + index * each), lead) >= each - slack
    if (Array.from({ length: of }, lasts).every(Boolean)) return of
  }
  return undefined
}

function pourAt(
  { pace, lead, potAt }: ChainInput,
  { from, stretches, intoWet }: Pick<ChainedPour, 'from' | 'stretches' | 'intoWet'>,
): ChainedPour {
  const pot = potAt(from)
  const mixAt = from - pot.induction - lead
  const area = stretches.reduce((all, stretch) => all + stretch.area, 0)
  return { ...pot, mixAt, from, end: from + area / pace, until: mixAt + pot.life, stretches, intoWet }
}
