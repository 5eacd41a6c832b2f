/** The deck plan: zones drawn from above, the chosen one changed by its corners, by hand, by key or in figures. */
import { useEffect, useRef, useState } from 'react'
import { labelOf } from '#words'
import { useAskedItem } from '../../../fields/asked-cell.ts'
import { itemsOf } from '../../../fields/items.ts'
import type { JobView } from '../../../job/job-view.ts'
import { ChoiceField, Part, Switch2, useWidth } from '../../../parts/index.ts'
import type { ShownPlan } from '../../../worker/messages.ts'
import { CornerHandles } from './corner-handles.tsx'
import { snapped } from './corner-text.ts'
import { DeckDrawing } from './deck-drawing.tsx'
import { addCorner, dropCorner, nudgeCorner, removeCorner } from './deck-edits.ts'
import { type DeckView, deckView, type Place, sheerOf, wholeBounds, zoneBounds } from './deck-view.ts'
import { type DeckItem, deckZones, drawnZones } from './drawn-zones.ts'
import type { Dragged } from './use-hold.ts'
import { type Corner, cornersOf, cornersPlace, offsetsPlace, ringOf, sideOf } from './zone-corners.ts'
import { cornerName, ZoneShape } from './zone-shape.tsx'
import './deck.css'

export type DeckPartProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
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
      action={corners.length > 0 ? <Extent shown={shown} onChange={setShown} /> : undefined}
    >
      <div className="deck-which off-paper">
        <ChoiceField
          as="list"
          label={labelOf('deckplan.which')}
          value={zone?.id ?? ''}
          onChange={onChoose}
          choices={zones.map(({ id, name }) => ({ value: id, label: name }))}
        />
      </div>
      <Board
        {...{ view, plan, zone, corners, corner, dragged, onChoose, onDrag: setDragged }}
        onCorner={setCorner}
        alone={shown === 'zone'}
      />
      {zone ? (
        <ZoneShape
          {...{ view, plan, zone, corners, corner }}
          sheer={sheerOf(plan.surfaces.outline)}
          onCorner={setCorner}
        />
      ) : null}
    </Part>
  )
}

type ExtentProps = {
  readonly shown: 'whole' | 'zone'
  readonly onChange: (shown: 'whole' | 'zone') => void
}

/** The zone alone is larger, where corners lie near each other. */
const Extent = ({ shown, onChange }: ExtentProps) => (
  <Switch2
    label={labelOf('deckplan.shown')}
    value={shown}
    onChange={onChange}
    choices={[
      { value: 'whole', label: labelOf('deckplan.whole') },
      { value: 'zone', label: labelOf('deckplan.zoneAlone') },
    ]}
  />
)

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
