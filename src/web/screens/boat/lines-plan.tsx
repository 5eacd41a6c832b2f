/** The boat in lines, with its zones to choose, its stripe, the water and the chief dimensions. */
import type { Certainty } from '#core/note'
import type { Words } from '#words'
import { labelOf } from '#words'
import { Dimension } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import {
  type BoatLayout,
  boatLayout,
  draftLeft,
  type Outline,
  type Place,
  pathOf,
  waterPaths,
} from './boat-layout.ts'
import { findingPlaces } from './finding-places.ts'
import { Findings } from './findings.tsx'
import { zoneShapes } from './zone-shapes.ts'
import './boat.css'

type Line = Outline['sheerPlan']['keel']

export type LinesPlanProps = {
  readonly plan: ShownPlan
  readonly outline: Outline
  readonly words: Words
  readonly width: number
  /** Paint of a zone, where the boat is shown painted. */
  readonly paint: ((zone: string) => string | undefined) | undefined
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const LinesPlan = ({ plan, outline, words, width, paint, chosen, onChoose }: LinesPlanProps) => {
  const layout = boatLayout(outline, width)
  return (
    <svg
      className="lines-plan"
      width={width}
      height={layout.height}
      role="img"
      aria-label={labelOf('boat.drawing')}
    >
      <Stations outline={outline} layout={layout} />
      <Zones
        plan={plan}
        outline={outline}
        layout={layout}
        paint={paint}
        chosen={chosen}
        onChoose={onChoose}
      />
      {plan.marks.stripes.map(({ id, zone, table: { rows } }) => (
        <path
          key={id}
          className="lines-stripe"
          style={painted(paint?.(zone))}
          d={pathOf(
            [
              ...rows.map((row) => layout.side(row.xM, row.lowerM)),
              ...rows.map((row) => layout.side(row.xM, row.upperM)).reverse(),
            ],
            true,
          )}
        />
      ))}
      {plan.marks.lines.map(({ id, table: { rows } }) => (
        <path
          key={id}
          className="lines-tape"
          d={pathOf(rows.map((row) => layout.side(row.xM, row.heightM)))}
        />
      ))}
      <SheerPlan outline={outline} layout={layout} />
      <HalfBreadth outline={outline} layout={layout} />
      <BodyPlan outline={outline} layout={layout} />
      <Water layout={layout} />
      <Sizes plan={plan} layout={layout} words={words} />
      <Findings
        places={findingPlaces({
          findings: plan.repairs.repairs,
          zones: [...plan.surfaces.zones, ...plan.marks.zones],
          outline,
          layout,
        })}
        width={width}
        perM={layout.perM}
        chosen={chosen}
        onChoose={onChoose}
      />
    </svg>
  )
}

type ViewProps = { readonly outline: Outline; readonly layout: BoatLayout }

const traced = (line: Line, place: Place, close = false): string =>
  pathOf(
    line.map(([a, b]) => place(a, b)),
    close,
  )

const SheerPlan = ({ outline: { sheerPlan }, layout: { side } }: ViewProps) => {
  const { keel, sheer, knuckles } = sheerPlan
  const ends = [
    [keel[0], sheer[0]],
    [keel.at(-1), sheer.at(-1)],
  ].map((pair) => pair.flatMap((point) => (point ? [point] : [])))
  return (
    <g>
      {knuckles.map(({ kind, line }) => (
        <path key={kind} className="lines-medium" d={traced(line, side)} />
      ))}
      {[keel, sheer, ...ends].map((line, at) => (
        <path key={String(at)} className="lines-thick" d={traced(line, side)} />
      ))}
    </g>
  )
}

const HalfBreadth = ({ outline: { halfBreadthPlan }, layout }: ViewProps) => {
  const { above, centre, length } = layout
  const { sheer, knuckles, waterlines } = halfBreadthPlan
  const [first] = sheer
  return (
    <g>
      <path className="lines-chain" d={`M${above(0, 0)[0] - 24} ${centre}H${above(length, 0)[0] + 16}`} />
      {waterlines.flatMap(({ height, lines }) =>
        lines.map((line, at) => (
          <path key={`${height} ${at}`} className="lines-hidden" d={traced(line, above)} />
        )),
      )}
      {knuckles.map(({ kind, line }) => (
        <path key={kind} className="lines-medium" d={traced(line, above)} />
      ))}
      <path className="lines-thick" d={traced(sheer, above)} />
      {first ? <path className="lines-thick" d={traced([[first[0], 0], first], above)} /> : null}
      <text className="lines-label" x={above(0, 0)[0]} y={centre - 8}>
        {labelOf('paperLines.halfBreadth')}
      </text>
    </g>
  )
}

const BodyPlan = ({ outline: { bodyPlan }, layout: { ahead, body } }: ViewProps) => {
  const xs = bodyPlan.map(({ x }) => x)
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2
  const every = Math.max(1, Math.round(bodyPlan.length / 11))
  const shown = bodyPlan.filter((_, at) => at === 0 || at === bodyPlan.length - 1 || at % every === 0)
  return (
    <g>
      <path className="lines-chain" d={`M${body.x} ${body.top - 8}V${body.keel + 12}`} />
      {shown.map(({ id, x, line }) => (
        <path
          key={id}
          className={x === xs[0] ? 'lines-thick' : 'lines-thin'}
          d={pathOf(line.map(([y, z]) => ahead(x < middle ? -y : y, z)))}
        />
      ))}
      <text className="lines-label" x={body.x} y={body.top - 16} textAnchor="middle">
        {labelOf('boat.bodyPlan')}
      </text>
    </g>
  )
}

/** Those that stand far enough from the last one shown. */
function apart<S extends { readonly x: number }>(stations: readonly S[], least: number): readonly S[] {
  const shown: S[] = []
  for (const station of stations) {
    const last = shown.at(-1)
    if (!last || last.x - station.x >= least) shown.push(station)
  }
  return shown
}

/** Numbered from the stem, far enough apart to be read. */
const Stations = ({ outline: { bodyPlan }, layout }: ViewProps) => {
  const { side, top, keel, centre, halfBeam, perM } = layout
  const shown = apart(
    [...bodyPlan].sort((a, b) => b.x - a.x),
    32 / perM,
  )
  return (
    <g>
      {shown.map(({ id, x }) => {
        const [at] = side(x, 0)
        return (
          <g key={id}>
            <path
              className="lines-station"
              d={`M${at} ${top - 8}V${keel + 8}M${at} ${centre - 4}V${centre + halfBeam * perM + 8}`}
            />
            <text className="lines-label" x={at} y={top - 16} textAnchor="middle">
              {/(\d+)\s*$/.exec(id)?.[1] ?? id.slice(0, 4)}
            </text>
          </g>
        )
      })}
    </g>
  )
}

const Water = ({ layout }: Pick<ViewProps, 'layout'>) => {
  const { lines, sign } = waterPaths(layout)
  return (
    <g className="lines-water">
      <path d={lines} />
      <path className="lines-water-sign" d={sign} />
    </g>
  )
}

type SizesProps = { readonly plan: ShownPlan; readonly layout: BoatLayout; readonly words: Words }

const Sizes = ({ plan, layout, words }: SizesProps) => {
  const found = plan.surfaces.hull?.particulars
  if (!found) return null
  const { side, length, keel, water, body, halfBeam, perM } = layout
  const sure = (code: string): Certainty =>
    plan.notes.some((note) => note.code === code) ? 'assumed' : 'measured'
  return (
    <g>
      <Dimension
        from={side(0, 0)[0]}
        to={side(length, 0)[0]}
        at={keel + 30}
        extendFrom={keel + 4}
        text={words.figure('lengthM', found.lengthOverall)}
        certainty="measured"
      />
      <Dimension
        from={body.x - halfBeam * perM}
        to={body.x + halfBeam * perM}
        at={body.keel + 30}
        extendFrom={body.water}
        text={words.figure('beamM', found.beamOverall)}
        certainty="measured"
      />
      {keel - water < 24 ? null : (
        <Dimension
          upright
          from={water}
          to={keel}
          at={side(0, 0)[0] - draftLeft}
          text={words.figure('draftM', found.draft)}
          certainty={sure('boat.draftAssumed')}
        />
      )}
    </g>
  )
}

type ZonesProps = ViewProps & Pick<LinesPlanProps, 'plan' | 'paint' | 'chosen' | 'onChoose'>

/** A paint is no colour of the look, so no class has it. */
const painted = (colour: string | undefined) => (colour === undefined ? undefined : { fill: colour })

/** Areas that answer to a touch; the table beside the drawing does the same by keyboard. */
const Zones = ({ plan, outline, layout, paint, chosen, onChoose }: ZonesProps) => (
  <g>
    {zoneShapes({ zones: plan.surfaces.zones, shapes: plan.surfaces.shapes, outline, layout }).map(
      ({ zone, paths }) => (
        <g
          key={zone}
          className={zone === chosen ? 'lines-zone lines-zone-chosen' : 'lines-zone'}
          style={painted(paint?.(zone))}
          onClick={() => onChoose(zone)}
        >
          {paths.map((path) => (
            <path key={path} d={path} />
          ))}
        </g>
      ),
    )}
  </g>
)
