/** Tables: figures right, text left, a thin rule under each row, a thick bar under the head; long cells wrap. */
import { baseline, lineStrip } from './blocks.ts'
import { bodyFigure, type Figure, figureDrawing } from './figure.ts'
import type { Setter } from './setter.ts'
import { type Align, type Drawing, inked, line } from './shapes.ts'
import { beside, type Strip, space, stacked, type Unit } from './strips.ts'
import { type StyleName, typeStyle } from './type-styles.ts'

export type TableColumn = {
  readonly head: string
  readonly align: Align
  /** Share of the width that is left when all shares are summed. */
  readonly share: number
}

export type TextCell = {
  readonly kind: 'text'
  readonly text: string
  readonly style: StyleName
  /** A second, quieter line. */
  readonly under: string
}
export type FigureCell = { readonly kind: 'figure'; readonly figures: readonly Figure[] }
export type Cell = TextCell | FigureCell

export const cell = (text: string, under = ''): Cell => ({ kind: 'text', text, style: 'body', under })
export const strongCell = (text: string, under = ''): Cell => ({ kind: 'text', text, style: 'strong', under })
export const figureCell = (...figures: readonly Figure[]): Cell => ({ kind: 'figure', figures })
export const noCell: Cell = { kind: 'text', text: '', style: 'body', under: '' }

export type TableAt = {
  readonly x: number
  readonly width: number
  readonly columns: readonly TableColumn[]
  readonly setter: Setter
}

const gutter = 3
const padding = 0.9

type Slot = { readonly x: number; readonly width: number; readonly align: Align }

export function slotsOf({ x, width, columns }: Omit<TableAt, 'setter'>): readonly Slot[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0)
  const free = width - gutter * (columns.length - 1)
  let at = x
  return columns.map(({ share, align }) => {
    const slot = { x: at, width: (free * share) / shares, align }
    at += slot.width + gutter
    return slot
  })
}

export function tableHead(table: TableAt): Strip {
  const slots = slotsOf(table)
  const heads = table.columns.map(({ head }, index) => {
    const slot = slots[index]!
    return stacked(
      table.setter
        .wrap(head, 'caption', slot.width)
        .map((text) => lineStrip(text, 'caption', slot, { align: slot.align, ink: 'ink2' })),
    )
  })
  const height = Math.max(...heads.map((head) => head.height)) + 1.2
  return {
    height: height + 0.6,
    draw: (top) => [
      ...heads.flatMap((head) => head.draw(top + height - 1.2 - head.height)),
      line('outline', [table.x, top + height], [table.x + table.width, top + height]),
    ],
  }
}

/** A row higher than this is cut into its lines, so that it can go on over the page. */
const cutAbove = 60

export function tableRow(table: TableAt, cells: readonly Cell[]): Unit {
  const slots = slotsOf(table)
  const columns = cells.map((each, index) => cellStrips(each, slots[index]!, table.setter))
  const whole = beside(columns.map(stacked))
  const lines = whole.height <= cutAbove ? [whole] : linesOf(columns)
  return [space(padding), ...lines, rowRule(table)]
}

const linesOf = (columns: readonly (readonly Strip[])[]): readonly Strip[] =>
  Array.from({ length: Math.max(...columns.map((strips) => strips.length)) }, (_, index) =>
    beside(columns.flatMap((strips) => strips[index] ?? [])),
  )

const rowRule = ({ x, width }: TableAt): Strip => ({
  height: padding,
  draw: (top): Drawing => [inked(line('thin', [x, top + padding], [x + width, top + padding]), 'rule')],
})

function cellStrips(each: Cell, slot: Slot, setter: Setter): readonly Strip[] {
  if (each.kind === 'figure') return each.figures.map((figure) => figureStrip(figure, slot, setter))
  const main =
    each.text === ''
      ? []
      : setter
          .wrap(each.text, each.style, slot.width)
          .map((text) => lineStrip(text, each.style, slot, { align: slot.align }))
  const under =
    each.under === ''
      ? []
      : setter
          .wrap(each.under, 'small', slot.width)
          .map((text) => lineStrip(text, 'small', slot, { align: slot.align, ink: 'ink2' }))
  return [...main, ...under]
}

const figureStrip = (figure: Figure, { x, width, align }: Slot, setter: Setter): Strip => {
  const at = { left: x, centre: x + width / 2, right: x + width }[align]
  return {
    height: typeStyle('strong').lead + 0.9,
    draw: (top) =>
      figureDrawing(figure, { at: [at, baseline(top, 'strong')], align, style: bodyFigure }, setter),
  }
}
