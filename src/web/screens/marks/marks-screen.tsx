/** Marks: the boot stripe with the numbers to strike it, and the non-skid panels. */
import type { Certainty } from '#core/note'
import { panelText } from '#papers'
import type { StripeMark } from '#plan'
import { labelOf } from '#words'
import { Collection } from '../../fields/collection.tsx'
import { itemsOf } from '../../fields/items.ts'
import { WayFigure } from '../../figures/way-figure.tsx'
import { notesOf } from '../../job/notes-of.ts'
import { Ghost, Ledger, Part, PartBlock, Sheet } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import './marks.css'
import { OverFloor } from './over-floor.tsx'
import { PanelDrawing } from './panel-drawing.tsx'
import { PanelFigures } from './panel-figures.tsx'
import { StripeDrawing } from './stripe-drawing.tsx'
import { TapeLinePart } from './tape-line-part.tsx'

const marks = { part: 'work', section: 'marks' } as const

export const MarksScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words } = view
  const edge = ({ stripe, row, of, certainty }: Edge, valueM: number) => (
    <>
      <span className="marks-label">{labelOf(`column.${of}`)} </span>
      <WayFigure
        view={view}
        of={{ kind: 'stripe', mark: stripe, row, of }}
        text={words.figure('heightByTapeM', valueM)}
        certainty={certainty}
        label={labelOf(`column.${of}`)}
      />
    </>
  )
  return (
    <Sheet
      head={head}
      block={block}
      title={plan ? words.sentence('marks.title', { tapeM: plan.marks.tapeM }) : labelOf('room.marks')}
    >
      {plan?.marks.stripes.map((stripe) => (
        <Part
          key={stripe.id}
          title={stripe.name}
          aside={words.sentence('marks.stripe', { areaM2: stripe.table.areaM2, tapeM: stripe.table.tapeM })}
          notes={sheetNotes(view, notesOf(plan, /^(marks|marking|stripe)\./))}
        >
          {plan.surfaces.outline ? (
            <StripeDrawing stripe={stripe} outline={plan.surfaces.outline} words={words} />
          ) : null}
          <Ledger
            caption={stripe.name}
            columns={(['fromStern', 'lower', 'upper', 'girth'] as const).map((key) => ({
              key,
              label: labelOf(`column.${key}`),
              align: 'right',
              phone: key === 'fromStern' ? 'first' : 'second',
            }))}
            rows={stripe.table.rows.map((row, at) => ({
              id: String(at),
              cells: {
                fromStern: words.figure('xM', row.xM),
                lower: edge(edgeOf(stripe, at, 'lower'), row.lowerM),
                upper: edge(edgeOf(stripe, at, 'upper'), row.upperM),
                girth: edge(edgeOf(stripe, at, 'girth'), row.girthM),
              },
            }))}
          />
          <OverFloor view={view} stripe={stripe} />
        </Part>
      ))}
      {plan?.marks.lines.map((line) => (
        <TapeLinePart key={line.id} view={view} plan={plan} line={line} />
      ))}
      {plan?.marks.panels.map((panel) => (
        <Part key={panel.id} title={panel.name}>
          <p>{panelText(panel, words)}</p>
          <PanelFigures view={view} panel={panel} />
          <PanelDrawing panel={panel} words={words} />
        </Part>
      ))}
      {plan && plan.marks.stripes.length + plan.marks.lines.length + plan.marks.panels.length === 0 ? (
        <Part label={labelOf('room.marks')}>
          <Ghost kind="sheet">{words.sentence('marks.none')}</Ghost>
        </Part>
      ) : null}
      <Part title={labelOf('marks.edit')}>
        <PartBlock>
          <Collection
            view={view}
            place={marks}
            keys={['name', 'kind', 'zone']}
            fresh={{
              name: labelOf('marks.newMark'),
              kind: 'boot stripe',
              zone: itemsOf(view, { part: 'work', section: 'zones' })[0]?.id ?? '',
            }}
            add={labelOf('marks.addMark')}
            aside={({ cells }) => String(cells.kind ?? '')}
          />
        </PartBlock>
      </Part>
    </Sheet>
  )
}

/** On a phone no head stands over the figures, so each carries its own. */
type Edge = {
  readonly stripe: string
  readonly row: number
  readonly of: 'lower' | 'upper' | 'girth'
  readonly certainty: Certainty
}

const edgeOf = ({ id, sure }: StripeMark, row: number, of: Edge['of']): Edge => ({
  ...{ stripe: id, row, of },
  certainty: sure[row]?.[of] ?? 'worked',
})
