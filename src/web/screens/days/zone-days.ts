/** What stands in the row of each zone between two moments: bars of work, waits, and windows for the next coat. */
import type { CoatWindow, WorkStep } from '#plan'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'

export type Bar = Minutes & {
  readonly step: string
  readonly people: readonly string[]
  /** A coat is never broken by a night; the rest may be split. */
  readonly kind: 'coat' | 'split' | 'key'
  readonly coat?: number
  readonly done: boolean
  readonly verdict: ShownPlan['days']['placed'][number]['verdict']
}

export type Line = Minutes & {
  readonly key: string
  readonly kind: 'wait' | 'window'
  /** The window ends here, and sanding comes before the next coat: shown where little is to spare. */
  readonly shut: boolean
}

export type ZoneDays = {
  /** Empty for work on the whole boat. */
  readonly zone: string
  readonly bars: readonly Bar[]
  readonly lines: readonly Line[]
}

export type ZoneDaysInput = {
  readonly plan: ShownPlan
  readonly windows: readonly CoatWindow[]
  readonly within: Minutes
}

/** With less than this to spare, the end of the window is drawn behind the coat that uses it. */
const SPARE_MINUTES = 6 * 60

export function zoneDays({ plan, windows, within }: ZoneDaysInput): readonly ZoneDays[] {
  const steps = new Map(plan.steps.steps.map((step) => [step.id, step]))
  const zones = ['', ...[...plan.surfaces.zones, ...plan.marks.zones].map(({ id }) => id)]
  const stepOf = (id: string): WorkStep | undefined => steps.get(id.replace(/^key:/, ''))
  const bars = plan.days.placed.flatMap((placed) =>
    placed.pieces
      .filter((piece) => overlaps(within, piece))
      .map((piece) => barOf(placed, piece, stepOf(placed.step))),
  )
  const lines = windows.flatMap((window) =>
    linesOf(plan, window).filter((line) => overlaps(within, minutesOf(line))),
  )
  const zoneOf = (step: string): string => {
    const zone = stepOf(step)?.zone ?? ''
    return zones.includes(zone) ? zone : ''
  }
  return zones.map((zone) => ({
    zone,
    bars: bars.filter(({ step }) => zoneOf(step) === zone),
    lines: lines.filter(({ key }) => zoneOf(key.slice(key.indexOf(' ') + 1)) === zone),
  }))
}

type Piece = ShownPlan['days']['placed'][number]['pieces'][number]

const minutesOf = ({ fromMinute, toMinute }: Minutes) => ({ startMinute: fromMinute, endMinute: toMinute })

const overlaps = (
  { fromMinute, toMinute }: Minutes,
  { startMinute, endMinute }: Pick<Piece, 'startMinute' | 'endMinute'>,
): boolean => endMinute > fromMinute && startMinute < toMinute

const barOf = (
  { step, done, verdict, keyFor }: ShownPlan['days']['placed'][number],
  { startMinute, endMinute, people }: Piece,
  known: WorkStep | undefined,
): Bar => ({
  ...{ step, done, verdict, people },
  fromMinute: startMinute,
  toMinute: endMinute,
  kind: keyFor !== undefined ? 'key' : known?.inOneGo ? 'coat' : 'split',
  ...(known?.coat === undefined || keyFor !== undefined ? {} : { coat: known.coat }),
})

/** From the coat below to the next one: the wait, then the window, which stops at the coat that uses it. */
function linesOf(plan: ShownPlan, window: CoatWindow): readonly Line[] {
  const { fromMinute, openMinute, shutMinute } = window
  const used = plan.days.placed.find(({ step }) => step === window.step)
  if (!used) return []
  const until = used.startMinute
  const shut = shutMinute !== undefined && shutMinute < until + SPARE_MINUTES
  const end = shut ? shutMinute : until
  const key = `wait ${window.step}`
  return [
    { key, kind: 'wait', fromMinute, toMinute: openMinute, shut: false },
    ...(end > openMinute
      ? [
          {
            key: `window ${window.step}`,
            kind: 'window',
            fromMinute: openMinute,
            toMinute: end,
            shut,
          } as const,
        ]
      : []),
  ]
}
