/** The deck from above as a drawing: sheer, centreline, zones with their names and areas, openings crossed out. */
import type { DeckShape, ZoneArea } from '#plan'
import { labelOf, type Words } from '#words'
import { classes } from '../../../parts/index.ts'
import { pathOf } from '../boat-layout.ts'
import { type DeckView, middleOf, type Place } from './deck-view.ts'

export type DrawnZone = Pick<ZoneArea, 'id' | 'name' | 'certainty'> & {
  /** Unknown while its shape encloses nothing. */
  readonly areaM2?: number
  readonly wrong: boolean
  readonly edges: DeckShape['edges']
  readonly openings: DeckShape['openings']
}

export type DeckDrawingProps = {
  readonly zones: readonly DrawnZone[]
  readonly sheer: readonly Place[] | undefined
  readonly view: DeckView
  readonly words: Words
  readonly system: 'metric' | 'us'
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const DeckDrawing = (props: DeckDrawingProps) => {
  const { zones, sheer, view, chosen, onChoose } = props
  const { width, height } = view
  // The larger first, so that the smaller can be hit; the chosen one over all.
  const drawn = [...zones].sort(
    (a, b) => Number(a.id === chosen) - Number(b.id === chosen) || (b.areaM2 ?? 0) - (a.areaM2 ?? 0),
  )
  return (
    <svg
      className="deck-drawing"
      width={width}
      height={height}
      role="img"
      aria-label={labelOf('deckplan.drawing')}
    >
      <Ticks {...props} />
      {sheer ? <Sheer sheer={sheer} view={view} /> : null}
      {drawn.map(({ id, certainty, wrong, edges, openings }) => (
        <g
          key={id}
          className={classes(
            'deck-zone',
            `deck-${certainty}`,
            id === chosen && 'deck-chosen',
            wrong && 'deck-wrong',
          )}
          onClick={() => onChoose(id)}
        >
          {edges.map((edge, at) => (
            <path key={String(at)} className="deck-face" d={traced(edge, view)} />
          ))}
          <path
            className="deck-edge"
            d={edges.map((edge) => outside(edge, edges.length > 1, view)).join('')}
          />
          {openings.map((opening, at) => (
            <Opening key={String(at)} opening={opening} view={view} />
          ))}
        </g>
      ))}
      <Centreline view={view} />
      {drawn.map((one) => (
        <Name key={one.id} {...props} one={one} />
      ))}
    </svg>
  )
}

const traced = (line: readonly Place[], { at }: DeckView, close = true): string => pathOf(line.map(at), close)

/** Halves that meet on the centreline have no edge there. */
function outside(edge: readonly Place[], mirrored: boolean, view: DeckView): string {
  const joins = edge.map(([, y], i) => mirrored && y === 0 && edge[(i + 1) % edge.length]![1] === 0)
  const seam = joins.lastIndexOf(true)
  if (seam < 0) return traced(edge, view)
  // From the end of a seam round to its beginning, in as many pieces as there are seams between.
  const round = edge.map((_, i) => (seam + 1 + i) % edge.length)
  const pieces: Place[][] = [[]]
  for (const at of round) {
    pieces.at(-1)!.push(edge[at]!)
    if (joins[at]) pieces.push([])
  }
  return pieces.map((piece) => traced(piece, view, false)).join('')
}

type ViewProps = { readonly view: DeckView }

const Sheer = ({ sheer, view }: ViewProps & { readonly sheer: readonly Place[] }) => {
  const starboard = [...sheer].reverse().map(([x, y]): Place => [x, -y])
  return <path className="deck-sheer" d={traced([...sheer, ...starboard], view)} />
}

const Centreline = ({ view }: ViewProps) => {
  const { aft, fore, port, starboard } = view.bounds
  if (port < 0 || starboard > 0) return null
  const line: readonly Place[] = [
    [aft, 0],
    [fore, 0],
  ]
  return <path className="deck-centre" d={traced(line, view, false)} />
}

/** A void is crossed from corner to corner, as on any drawing. */
const Opening = ({ opening, view }: ViewProps & { readonly opening: readonly Place[] }) => {
  const half = Math.floor(opening.length / 2)
  const crosses = [0, Math.floor(half / 2)].flatMap((from) => {
    const [a, b] = [opening[from], opening[from + half]]
    return a && b ? [[a, b]] : []
  })
  return (
    <>
      <path className="deck-opening" d={traced(opening, view)} />
      {crosses.map((line, at) => (
        <path key={String(at)} className="deck-void" d={traced(line, view, false)} />
      ))}
    </>
  )
}

const perLetter = 7.4

/** In the middle of the zone, where it fits; the table says it of every zone. */
const Name = ({ one, view, words, chosen }: DeckDrawingProps & { readonly one: DrawnZone }) => {
  const { id, name, areaM2, edges } = one
  const [edge] = edges
  if (!edge) return null
  const spans = edges.length === 2 && edge.some(([, y]) => Math.abs(y) < 1e-3)
  const [x, y] = view.at(spans ? [middleOf(edge)[0], 0] : middleOf(edge))
  const area = areaM2 === undefined ? '' : words.figure('areaM2', areaM2)
  const room = extent(spans ? edges.flat() : edge, view)
  const wide = Math.max(name.length, area.length) * perLetter
  const isChosen = id === chosen
  if (one.wrong || room.wide < wide || room.tall < 34) return null
  return (
    <g className={classes('deck-name', isChosen && 'deck-chosen-name')} transform={`translate(${x} ${y})`}>
      <text textAnchor="middle" y="-3">
        {name}
      </text>
      <text textAnchor="middle" y="14" className="deck-area">
        {area}
      </text>
    </g>
  )
}

function extent(edge: readonly Place[], view: DeckView) {
  const places = edge.map(view.at)
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)]
  return { wide: Math.max(...xs) - Math.min(...xs), tall: Math.max(...ys) - Math.min(...ys) }
}

const foot = 0.3048

/** Metres, or every second foot, from the stern: a rule along the edge of the drawing. */
const Ticks = ({ view, system }: DeckDrawingProps) => {
  const { aft, fore, starboard } = view.bounds
  const unit = system === 'us' ? 2 * foot : 1
  const every = unit * (view.perM * unit < 28 ? 2 : 1)
  const first = Math.ceil(aft / every)
  const count = Math.max(0, Math.floor(fore / every) - first + 1)
  return (
    <g className="deck-rule">
      {Array.from({ length: count }, (_, k) => {
        const value = (first + k) * every
        const [x, y] = view.at([value, starboard])
        const label = String(Math.round(system === 'us' ? value / foot : value)).replace('-', '\u2212')
        return (
          <g key={label}>
            <path d={view.upright ? `M${x} ${y}h8` : `M${x} ${y}v8`} />
            <text
              x={view.upright ? x + 12 : x}
              y={view.upright ? y + 5 : y + 24}
              textAnchor={view.upright ? 'start' : 'middle'}
            >
              {label}
            </text>
          </g>
        )
      })}
    </g>
  )
}
