/**
 * Where findings lie in the views of the lines plan, px: at the place somebody wrote down, else at the middle of
 * their zone, beside each other, and marked so.
 */
import type { Plan, ZoneArea } from '#plan'
import type { BoatLayout, Outline, Point } from './boat-layout.ts'

export type Finding = Plan['repairs']['repairs'][number]

export type FindingPlace = {
  readonly finding: Finding
  /** `F1` and up, in the order of the survey. */
  readonly mark: string
  readonly at: Point
  /** In the middle of its zone: nobody said where. */
  readonly guessed: boolean
  /** On the side that the sheer plan does not show. */
  readonly hidden: boolean
  readonly view: 'side' | 'above' | 'ahead'
}

export type FindingPlacesInput = {
  readonly findings: readonly Finding[]
  readonly zones: readonly ZoneArea[]
  readonly outline: Outline
  readonly layout: BoatLayout
}

/** Findings on zones that are not in the plan lie nowhere. */
export function findingPlaces(input: FindingPlacesInput): readonly FindingPlace[] {
  const { findings, zones } = input
  return findings.flatMap((finding, index) => {
    const zone = zones.find(({ id }) => id === finding.zone)
    if (!zone) return []
    const view = viewOf(zone)
    const guessed = !(view === 'side' ? isSet(finding, 'heightM') : isSet(finding, 'yM'))
    return [
      {
        finding,
        mark: `F${index + 1}`,
        at: pointOf(input, { finding, zone, view }),
        guessed,
        hidden: view === 'side' && zone.side === 'starboard',
        view,
      },
    ]
  })
}

/** Both of the two figures that a view needs. */
const isSet = ({ at }: Finding, across: 'heightM' | 'yM'): boolean =>
  at?.xM !== undefined && at[across] !== undefined

function viewOf({ kind }: ZoneArea): FindingPlace['view'] {
  if (kind === 'transom') return 'ahead'
  return ['topsides', 'bottom', 'boot-top', 'boot stripe'].includes(kind) ? 'side' : 'above'
}

/** Where a zone begins and ends along the boat, and how far out its middle lies, as shares. */
const spans: Readonly<Record<string, readonly [from: number, to: number, out: number]>> = {
  foredeck: [0.64, 0.94, 0.45],
  'cockpit sole': [0.08, 0.5, 0.3],
  'cockpit side': [0.08, 0.5, 0.66],
  'side deck': [0.15, 0.75, 0.88],
  'cabin top': [0.4, 0.7, 0.35],
  console: [0.4, 0.5, 0.15],
  gunwale: [0.1, 0.8, 0.97],
  hardtop: [0.35, 0.55, 0.3],
  'outboard well': [0, 0.1, 0.3],
  'swim platform': [0, 0.03, 0.5],
}
const anywhere = [0.12, 0.88, 0.5] as const

type Asked = {
  readonly finding: Finding
  readonly zone: ZoneArea
  readonly view: FindingPlace['view']
}

function pointOf(input: FindingPlacesInput, { finding, zone, view }: Asked): Point {
  const { outline, layout } = input
  const { at = {} } = finding
  const [from, to, out] = spans[zone.kind] ?? anywhere
  const x = at.xM ?? layout.length * (from + (to - from) * shareOf(input, finding))
  if (view === 'above') return layout.above(x, at.yM ?? breadthAt(outline, x) * out)
  const high = heightAt(outline.sheerPlan.sheer, x)
  const middle =
    zone.kind === 'bottom'
      ? heightAt(outline.sheerPlan.keel, x) / 2
      : high * (zone.kind === 'boot-top' ? 0.1 : 0.55)
  if (view === 'side') return layout.side(x, at.heightM ?? middle)
  return layout.ahead(at.yM === undefined ? -0.4 * layout.halfBeam : -at.yM, at.heightM ?? high * 0.5)
}

/** Those without a place stand side by side in their zone. */
function shareOf({ findings }: FindingPlacesInput, finding: Finding): number {
  const beside = findings.filter((other) => other.zone === finding.zone && other.at?.xM === undefined)
  return (beside.indexOf(finding) + 1) / (beside.length + 1)
}

const breadthAt = ({ halfBreadthPlan }: Outline, x: number): number => heightAt(halfBreadthPlan.sheer, x)

/** Between the two points of a line around x. */
function heightAt(line: readonly (readonly [number, number])[], x: number): number {
  const sorted = [...line].sort((a, b) => a[0] - b[0])
  const next = sorted.findIndex(([at]) => at >= x)
  const [before, after] = [sorted[Math.max(0, next - 1)], sorted[next < 0 ? sorted.length - 1 : next]]
  if (!before || !after) return 0
  const wide = after[0] - before[0]
  return wide === 0 ? after[1] : before[1] + ((after[1] - before[1]) * (x - before[0])) / wide
}

/** Room of one balloon, px. */
export const balloon = { radius: 14, apart: 34 } as const

export type Balloon = { readonly mark: string; readonly at: Point }

/** Balloons stand up and forward of their finding, and move aside where two would touch. */
export function balloonsOf(places: readonly FindingPlace[], width: number): readonly Balloon[] {
  const placed: Balloon[] = []
  for (const { mark, at, view } of [...places].sort((a, b) => a.at[0] - b.at[0])) {
    const y = at[1] + (view === 'above' ? 38 : -38)
    const from = Math.min(at[0] + 22, width - balloon.radius - 2)
    const free = (x: number): boolean =>
      x >= balloon.radius + 2 &&
      x <= width - balloon.radius - 2 &&
      placed.every((other) => distance(other.at, [x, y]) >= balloon.apart)
    const step = Array.from({ length: 200 }, (_, k) => (k % 2 === 0 ? 2 : -2) * (k + 1)).find((by) =>
      free(from + by),
    )
    placed.push({ mark, at: [free(from) ? from : from + (step ?? 0), y] })
  }
  return placed
}

const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])
