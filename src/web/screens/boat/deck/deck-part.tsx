/** The deck plan: zones drawn from above, the chosen one changed by its corners, by hand, by key or in figures. */
import { useEffect, useRef, useState } from 'react'
import { hasDeckShape } from '#plan'
import { labelOf } from '#words'
import { useAskedItem } from '../../../fields/asked-cell.ts'
import { itemsOf, nameOf } from '../../../fields/items.ts'
import type { JobView } from '../../../job/job-view.ts'
import { ChoiceField, Part, Switch2, useWidth } from '../../../parts/index.ts'
import type { ShownPlan } from '../../../worker/messages.ts'
import { CornerHandles, type Dragged } from './corner-handles.tsx'
import { snapped } from './corner-text.ts'
import { DeckDrawing, type DrawnZone } from './deck-drawing.tsx'
import { addCorner, dropCorner, nudgeCorner, removeCorner } from './deck-edits.ts'
import { type DeckView, deckView, type Place, sheerOf, wholeBounds, zoneBounds } from './deck-view.ts'
import {
  type Corner,
  cornersOf,
  cornersPlace,
  offsetsPlace,
  ringOf,
  sideOf,
  zonesPlace,
} from './zone-corners.ts'
import { cornerName, ZoneShape } from './zone-shape.tsx'
import './deck.css'

export type DeckPartProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly chosen: string | undefined
  readonly onChoose: (zone: string | undefined) => void
}

export const DeckPart = ({ view, plan, chosen, onChoose }: DeckPartProps) => {
  const [shown, setShown] = useState<'whole' | 'zone'>('whole')
  const [corner, setCorner] = useState<string>()
  const [dragged, setDragged] = useState<Dragged>()
  const zones = deckZones(view)
  useAskedZone(view, (zone, row) => {
    onChoose(zone)
    setCorner(row)
  })
  const zone = zones.find(({ id }) => id === chosen)
  const corners = zone ? cornersOf(view, zone.id) : []
  return (
    <Part
      id="deck-plan"
      title={labelOf('deckplan.plan')}
      action={
        corners.length > 0 ? (
          <Switch2
            label={labelOf('deckplan.shown')}
            value={shown}
            onChange={setShown}
            choices={[
              { value: 'whole', label: labelOf('deckplan.whole') },
              { value: 'zone', label: labelOf('deckplan.zoneAlone') },
            ]}
          />
        ) : undefined
      }
    >
      <div className="deck-which off-paper">
        <ChoiceField
          as="list"
          label={labelOf('deckplan.which')}
          value={zone?.id ?? ''}
          onChange={(id) => onChoose(id === '' ? undefined : id)}
          choices={[
            { value: '', label: labelOf('deckplan.none') },
            ...zones.map(({ id, name }) => ({ value: id, label: name })),
          ]}
        />
      </div>
      <Board
        {...{ view, plan, zones, zone, corners, corner, dragged, onChoose, onDrag: setDragged }}
        onCorner={setCorner}
        alone={shown === 'zone'}
      />
      {zone ? (
        <ZoneShape
          view={view}
          plan={plan}
          zone={zone}
          corners={corners}
          sheer={sheerOf(plan.surfaces.outline)}
          corner={corner}
          onCorner={setCorner}
        />
      ) : null}
    </Part>
  )
}

type DeckItem = {
  readonly id: string
  readonly name: string
  readonly kind: string
  readonly mirrored: boolean
}

/** Those whose kind can be drawn. */
const deckZones = (view: JobView): readonly DeckItem[] =>
  itemsOf(view, zonesPlace).flatMap((item) => {
    const kind = String(item.cells.kind ?? '')
    const mirrored = item.cells.mirror === 'yes' || item.cells.mirror === 'true'
    return hasDeckShape(kind) ? [{ id: item.id, name: nameOf(item), kind, mirrored }] : []
  })

/** A figure that leads to one of its corners opens its zone. */
function useAskedZone(view: JobView, open: (zone: string, row: string) => void): void {
  const corner = useAskedItem(cornersPlace)
  const offset = useAskedItem(offsetsPlace)
  const now = useRef({ view, open })
  now.current = { view, open }
  useEffect(() => {
    const asked = corner ?? offset
    if (asked === undefined) return
    const items = itemsOf(now.current.view, corner ? cornersPlace : offsetsPlace)
    const zone = items.find(({ id }) => id === asked)?.cells.zone
    if (typeof zone === 'string') now.current.open(zone, asked)
  }, [corner, offset])
}

type BoardProps = Pick<DeckPartProps, 'view' | 'plan'> & {
  readonly zones: readonly DeckItem[]
  readonly zone: DeckItem | undefined
  readonly corners: readonly Corner[]
  readonly corner: string | undefined
  readonly dragged: Dragged | undefined
  readonly alone: boolean
  readonly onChoose: (zone: string) => void
  readonly onCorner: (id: string | undefined) => void
  readonly onDrag: (dragged: Dragged | undefined) => void
}

/** The drawing with its handles, and a line that says where the corner in hand lies. */
const Board = (props: BoardProps) => {
  const { view, plan, zone, corner, dragged, alone, onChoose } = props
  const { ref, width } = useWidth<HTMLDivElement>()
  const outline = plan.surfaces.outline
  const sheer = sheerOf(outline)
  const corners = props.corners.map((one) =>
    dragged?.id === one.id ? { ...one, place: dragged.place } : one,
  )
  // What is dragged does not push the drawing about: it stands still until it is let go.
  const still = ringOf(props.corners, 0)
  const bounds =
    (alone ? zoneBounds(still) : undefined) ??
    wholeBounds(
      sheer,
      plan.surfaces.shapes.flatMap(({ edges }) => edges),
    )
  const drawn = width > 0 ? deckView(bounds, width) : undefined
  const inHand = corners.find(({ id }) => id === (dragged?.id ?? corner))
  return (
    <div className="deck-board" ref={ref}>
      {drawn ? (
        <div className="deck-canvas" style={{ height: drawn.height }}>
          <DeckDrawing
            zones={drawnZones(plan, zone, corners)}
            sheer={outline ? sheer : undefined}
            view={drawn}
            words={view.words}
            system={view.system}
            chosen={zone?.id}
            onChoose={onChoose}
          />
          {zone && !view.readOnly ? <Handles {...props} zone={zone} drawn={drawn} sheer={sheer} /> : null}
        </div>
      ) : null}
      <p className="deck-said" aria-live="polite">
        {inHand?.place ? placeSaid(view, inHand, inHand.place) : view.words.sentence('deckplan.help')}
      </p>
    </div>
  )
}

type HandlesProps = BoardProps & {
  readonly zone: DeckItem
  readonly drawn: DeckView
  readonly sheer: readonly Place[]
}

const Handles = ({ view, zone, corners, corner, dragged, drawn, sheer, onCorner, onDrag }: HandlesProps) => {
  const side = zone.mirrored ? sideOf(corners) : undefined
  return (
    <CornerHandles
      corners={corners}
      view={drawn}
      chosen={corner}
      dragged={dragged}
      nameOf={(one, place) => placeSaid(view, one, place)}
      snap={(place) => snapped(place, { perM: drawn.perM, sheer, system: view.system, side })}
      onChoose={({ id }) => onCorner(id)}
      onDrag={onDrag}
      onDrop={({ id }, place) => dropCorner(view, id, place)}
      onNudge={(one, nudge) => nudgeCorner(view, one, nudge)}
      onAdd={(one) => onCorner(addCorner(view, zone.id, corners, one))}
      onRemove={(one) => {
        onCorner(undefined)
        removeCorner(view, one)
      }}
    />
  )
}

const placeSaid = (view: JobView, corner: Corner, [x, y]: Place): string =>
  view.words.sentence('deckplan.cornerAt', {
    corner: cornerName(view, corner),
    xM: x,
    offM: Math.abs(y),
    side: y < 0 ? 'starboard' : y > 0 ? 'port' : 'centre',
  })

/** As the plan has them; the zone in hand as its corners are now, before any plan is made. */
function drawnZones(
  { surfaces, marks, notes }: ShownPlan,
  chosen: DeckItem | undefined,
  corners: readonly Corner[],
): readonly DrawnZone[] {
  const all = [...surfaces.zones, ...marks.zones]
  const planned = all.flatMap((zone): DrawnZone[] => {
    const shape = surfaces.shapes.find((one) => one.zone === zone.id)
    if (!shape || shape.edges.length === 0 || (zone.id === chosen?.id && corners.length > 0)) return []
    const { edges, openings } = shape
    return [{ ...zone, edges, openings, wrong: false }]
  })
  if (!chosen || corners.length === 0) return planned
  const both = (ring: readonly Place[]): readonly (readonly Place[])[] =>
    chosen.mirrored ? [ring, ring.map(([x, y]): Place => [x, -y])] : [ring]
  const openings = [...new Set(corners.map(({ opening }) => opening))].filter((opening) => opening > 0)
  const area = all.find(({ id }) => id === chosen.id)
  const inHand: DrawnZone = {
    id: chosen.id,
    name: chosen.name,
    certainty: area?.certainty ?? 'assumed',
    ...(area ? { areaM2: area.areaM2 } : {}),
    edges: both(ringOf(corners, 0)),
    openings: openings.flatMap((opening) => both(ringOf(corners, opening))),
    wrong: notes.some(({ code, data }) => data.zone === chosen.id && unusable.has(code)),
  }
  return [...planned, inHand]
}

/** Notes on a shape that encloses nothing. */
const unusable = new Set(['boat.deckCrosses', 'boat.deckNoArea', 'boat.deckTooFewCorners'])
