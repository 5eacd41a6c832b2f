/** The chosen zone under the drawing: its area, edge and paint, what can be done to its shape, and its figures in boxes. */
import { noteText } from '#papers'
import { weakest, type ZoneArea } from '#plan'
import { labelOf } from '#words'
import { Cells, Fold } from '../../../fields/cells.tsx'
import { itemsOf } from '../../../fields/items.ts'
import { WayFigure } from '../../../figures/way-figure.tsx'
import { cellOf, type JobView } from '../../../job/job-view.ts'
import { Button, FigureText } from '../../../parts/index.ts'
import type { ShownPlan } from '../../../worker/messages.ts'
import { cellReader } from './cell-reader.ts'
import { addCorner, drawOpening, drawZone, removeCorner, startOffsets } from './deck-edits.ts'
import { breadthAt, type Place } from './deck-view.ts'
import { RowTable } from './row-table.tsx'
import { startCorners } from './start-corners.ts'
import { type Corner, cornersPlace, markOf, offsetsPlace, zonesPlace } from './zone-corners.ts'

export type ZoneShapeProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly zone: { readonly id: string; readonly name: string; readonly kind: string }
  readonly corners: readonly Corner[]
  readonly sheer: readonly Place[]
  readonly corner: string | undefined
  readonly onCorner: (id: string | undefined) => void
}

const standing = ['upstandHeight', 'upstandLength', 'openingLength', 'openingWidth', 'openingCount', 'count']
const more = [
  'mirror',
  'camber',
  'slope',
  'upstandHeight',
  'upstandLength',
  'openingLength',
  'openingWidth',
  'openingCount',
  'count',
  'faces',
]

export const ZoneShape = (props: ZoneShapeProps) => {
  const { view, plan, zone, corners } = props
  const offsets = itemsOf(view, offsetsPlace).filter(({ cells }) => cells.zone === zone.id)
  const area = [...plan.surfaces.zones, ...plan.marks.zones].find(({ id }) => id === zone.id)
  return (
    <div className="deck-chosen-zone">
      {area ? <Figures view={view} plan={plan} area={area} /> : null}
      <Said view={view} plan={plan} zone={zone.id} />
      {corners.length > 0 ? (
        <ByCorners {...props} />
      ) : offsets.length > 0 ? (
        <ByOffsets {...props} rows={offsets.map(({ id }) => id)} />
      ) : isUpright(zone) ? (
        <>
          <p>{view.words.sentence('deckplan.standsUp', { name: zone.name })}</p>
          <Cells view={view} place={{ ...zonesPlace, item: zone.id }} keys={standing} helped />
        </>
      ) : (
        <Undrawn {...props} />
      )}
      {isUpright(zone) && corners.length + offsets.length === 0 ? null : (
        <Fold title={labelOf('deckplan.more')}>
          <Cells
            view={view}
            place={{ ...zonesPlace, item: zone.id }}
            keys={offsets.length > 0 && corners.length === 0 ? ['curve', ...more] : more}
            helped
          />
        </Fold>
      )}
    </div>
  )
}

type SaidProps = Pick<ZoneShapeProps, 'view' | 'plan'> & { readonly zone: string }

/** What the plan has to say of this zone, where its corners are at hand. */
const Said = ({ view, plan, zone }: SaidProps) => {
  const notes = plan.notes.filter(
    ({ code, data }) => data.zone === zone && /^(boat\.deck|surfaces\.)/.test(code),
  )
  return notes.length === 0 ? null : (
    <ul className="deck-notes">
      {notes.map((note) => (
        <li key={note.code}>{noteText(plan, note, view.words)}</li>
      ))}
    </ul>
  )
}

/** From above it is no more than a line. */
const isUpright = ({ kind }: ZoneShapeProps['zone']): boolean => ['cabin side', 'cockpit side'].includes(kind)

type FiguresProps = Pick<ZoneShapeProps, 'view' | 'plan'> & { readonly area: ZoneArea }

/** They follow every edit, so what they were stands struck through beside them. */
const Figures = ({ view, plan, area }: FiguresProps) => {
  const { words, before } = view
  const old = [...(before?.surfaces.zones ?? []), ...(before?.marks.zones ?? [])].find(
    ({ id }) => id === area.id,
  )
  const layers = plan.quantities.layers.filter(({ zone }) => zone === area.id)
  const litres = layers.reduce((sum, { mixedM3 }) => sum + mixedM3, 0)
  return (
    <dl className="deck-figures">
      <div>
        <dt>{labelOf('column.area')}</dt>
        <dd>
          <WayFigure
            view={view}
            of={{ kind: 'zone area', zone: area.id }}
            text={words.figure('areaM2', area.areaM2)}
            was={old && words.figure('areaM2', old.areaM2)}
            certainty={area.certainty}
            label={area.name}
            size="part"
          />
        </dd>
      </div>
      <div>
        <dt>{labelOf('column.edge')}</dt>
        <dd>
          <FigureText
            text={words.figure('perimeterM', area.perimeterM)}
            certainty={area.certainty}
            size="part"
          />
        </dd>
      </div>
      {litres > 0 ? (
        <div>
          <dt>{labelOf('boat.paint')}</dt>
          <dd>
            <WayFigure
              view={view}
              of={{ kind: 'zone litres', zone: area.id }}
              text={words.figure('volumeM3', litres)}
              certainty={weakest(...layers.map(({ certainty }) => certainty))}
              label={words.sentence('boat.paintOn', { name: area.name })}
              size="part"
            />
          </dd>
        </div>
      ) : null}
    </dl>
  )
}

const ByCorners = ({ view, zone, corners, corner: id, onCorner }: ZoneShapeProps) => {
  const { words } = view
  const corner = corners.find((one) => one.id === id) ?? corners[0]!
  return (
    <>
      {view.readOnly ? null : (
        <div className="deck-acts">
          <Button onClick={() => onCorner(addCorner(view, zone.id, corners, corner))}>
            {words.sentence('deckplan.addAfter', { corner: markOf(corner) })}
          </Button>
          <Button
            onClick={() => {
              onCorner(undefined)
              removeCorner(view, corner)
            }}
          >
            {words.sentence('deckplan.takeCorner', { corner: markOf(corner) })}
          </Button>
          <Button onClick={() => drawOpening(view, zone.id, corners)}>
            {labelOf('deckplan.addOpening')}
          </Button>
        </div>
      )}
      <RowTable
        view={view}
        place={cornersPlace}
        keys={['fromStern', 'offCentre']}
        rows={corners.map((one) => ({ id: one.id, mark: markOf(one), name: cornerName(view, one) }))}
        caption={words.sentence('deckplan.cornersOf', { name: zone.name })}
        chosen={corner.id}
        onChoose={onCorner}
      />
    </>
  )
}

export const cornerName = ({ words }: Pick<JobView, 'words'>, { opening, number }: Corner): string =>
  words.sentence('deckplan.corner', { corner: number, opening })

type OffsetsProps = ZoneShapeProps & { readonly rows: readonly string[] }

const ByOffsets = ({ view, zone, rows, corner: id, onCorner, sheer }: OffsetsProps) => {
  const { words, edits } = view
  const chosen = rows.includes(id ?? '') ? id! : rows.at(-1)!
  const add = (): void => {
    const last = cellReader(view, { ...offsetsPlace, item: rows.at(-1)! })
    const x = (last('fromStern')?.value ?? 0) + 0.5
    startOffsets(view, zone.id, [[x, last('outer')?.value ?? breadthAt(sheer, x)]])
  }
  return (
    <>
      <RowTable
        view={view}
        place={offsetsPlace}
        keys={['fromStern', 'outer', 'inner']}
        rows={rows.map((row, at) => ({
          id: row,
          mark: String(at + 1),
          name: words.sentence('deckplan.offset', { offset: at + 1 }),
        }))}
        caption={words.sentence('deckplan.offsetsOf', { name: zone.name })}
        chosen={chosen}
        onChoose={onCorner}
      />
      {view.readOnly ? null : (
        <div className="deck-acts">
          <Button onClick={add}>{labelOf('deckplan.addOffset')}</Button>
          <Button
            onClick={() => {
              onCorner(undefined)
              edits.together((all) => all.remove({ ...offsetsPlace, item: chosen }))
            }}
          >
            {words.sentence('deckplan.takeOffset', { offset: rows.indexOf(chosen) + 1 })}
          </Button>
        </div>
      )}
    </>
  )
}

const Undrawn = ({ view, zone, sheer, onCorner }: ZoneShapeProps) => {
  const place = { ...zonesPlace, item: zone.id }
  const cell = cellReader(view, place)
  const [length, width, area] = [cell('length'), cell('width'), cell('area')]
  const start = () =>
    startCorners({
      kind: zone.kind,
      sheer,
      length: length?.value,
      width: width?.value,
      area: area?.value,
    })
  // Of the size that a tape has given it, wherever it lies: no less sure than before.
  const about = !(length?.certainty === 'measured' && width?.certainty === 'measured')
  const draw = (): void => {
    onCorner(undefined)
    drawZone(view, zone.id, { ...start(), about, pair: cellOf(view, { ...place, key: 'count' }) === '2' })
  }
  const measure = (): void => {
    const { corners } = start()
    const widest = Math.max(...corners.map(([, y]) => Math.abs(y)))
    const xs = corners.map(([x]) => x)
    const rows = [Math.min(...xs), Math.max(...xs)].map((x): Place => {
      const out = Math.min(widest, breadthAt(sheer, x))
      return [x, Math.round(out * 100) / 100]
    })
    startOffsets(view, zone.id, rows)
  }
  return (
    <div className="deck-undrawn">
      <p>{view.words.sentence('deckplan.notDrawn', { name: zone.name })}</p>
      {view.readOnly ? null : (
        <div className="deck-acts">
          <Button onClick={draw}>{labelOf('deckplan.draw')}</Button>
          <Button onClick={measure}>{labelOf('deckplan.byOffsets')}</Button>
        </div>
      )}
    </div>
  )
}
