/** What is drawn of the boat and how: faces with their fill, lines with width and dash, the same for both ways to draw. */
import type { Solid, SolidFace } from '#plan'
import type { ShownPlan } from '../../../worker/messages.ts'
import { lineOn, paintColour } from './paint-colour.ts'

/** Tokens of the look that the picture uses. */
export const inkNames = [
  'paper',
  'raised',
  'inset',
  'sel',
  'ink',
  'ink2',
  'hair',
  'rule',
  'act',
  'water',
  'skin',
] as const
export type Ink = (typeof inkNames)[number]
/** The colours of the tokens as they are now, each as `rgb(...)`. */
export type Inks = Readonly<Record<Ink, string>>

export type Finish = 'drawn' | 'painted'

/** A token, or the colour of a paint. */
export type Fill = { readonly ink: Ink } | { readonly paint: string }

export type FaceLook = { readonly face: SolidFace; readonly fill: Fill }

export type LineLook = {
  readonly key: string
  readonly pairs: Uint32Array
  readonly fill: Fill
  readonly width: number
  /** On and off, px. */
  readonly dash?: readonly number[]
  /** Over the other lines. */
  readonly over?: boolean
}

export type Asked = {
  readonly finish: Finish
  /** Zone of the job. */
  readonly chosen: string | undefined
  /** Colour of each face by how warm it is, where that is asked; then paint does not show. */
  readonly heat?: ((face: SolidFace) => string | undefined) | undefined
  /** Id of a face. */
  readonly hovered: string | undefined
}

export type Picture = { readonly faces: readonly FaceLook[]; readonly lines: readonly LineLook[] }

/** The product that stands outermost on a zone. */
export function outerSheet({ buildUps }: Pick<ShownPlan, 'buildUps'>, zone: string) {
  const outer = buildUps.layers.filter((layer) => layer.zone === zone).at(-1)
  return outer && buildUps.sheets.find(({ id }) => id === outer.sheet)
}

/** Its colour, where its words name one. */
export function paintOf(plan: Pick<ShownPlan, 'buildUps'>, zone: string): string | undefined {
  const sheet = outerSheet(plan, zone)
  return sheet && paintColour(sheet.colour)
}

export type PaintOf = (zone: string) => string | undefined

/** Everything but the outline, which depends on the eye. */
export function pictureOf(solid: Solid, paint: PaintOf, asked: Asked): Picture {
  const looks = solid.faces.map((face) => ({ face, fill: fillOf(face, paint, asked) }))
  return { faces: looks, lines: [...looks.flatMap(rulings), ...drawnLines(solid), ...borders(looks, asked)] }
}

const isChosen = ({ zone }: SolidFace, { chosen }: Asked): boolean => zone !== undefined && zone === chosen

function fillOf(face: SolidFace, paint: PaintOf, asked: Asked): Fill {
  const warmth = asked.heat?.(face)
  if (warmth !== undefined) return { paint: warmth }
  const colour = asked.finish === 'painted' && face.zone !== undefined ? paint(face.zone) : undefined
  if (colour !== undefined) return { paint: colour }
  if (isChosen(face, asked)) return { ink: 'sel' }
  if (face.kind === 'stripe' && asked.finish === 'drawn') return { ink: 'ink2' }
  return { ink: face.id === asked.hovered ? 'inset' : 'paper' }
}

/** Stations are thin; on a paint they take what is read on it. */
function rulings({ face, fill }: FaceLook): readonly LineLook[] {
  if (face.stations.length === 0 || face.kind === 'stripe') return []
  return [{ key: `station ${face.id}`, pairs: face.stations, fill: lineFill(fill, 'hair'), width: 1 }]
}

const lineFill = (on: Fill, ink: Ink): Fill => ('paint' in on ? { paint: lineOn(on.paint) } : { ink })

const widths = { sheer: 2.5, chine: 1.5, rail: 1.5, keel: 1.5, end: 1.5, waterline: 1.6 } as const

const drawnLines = ({ lines }: Solid): readonly LineLook[] =>
  lines.map(({ kind, pairs }) =>
    kind === 'waterline'
      ? { key: kind, pairs, fill: { ink: 'water' }, width: widths[kind], dash: [16, 4, 2, 4] }
      : { key: kind, pairs, fill: { ink: 'ink' }, width: widths[kind] },
  )

/** Faces on the deck have an edge of their own, dotted where they are a guess; the chosen zone is outlined. */
const borders = (looks: readonly FaceLook[], asked: Asked): readonly LineLook[] =>
  looks.flatMap(({ face, fill }): readonly LineLook[] => {
    const line = { key: `border ${face.id}`, pairs: face.border }
    if (isChosen(face, asked)) return [{ ...line, fill: { ink: 'act' }, width: 3, over: true }]
    if (face.kind !== 'deck zone') return []
    return [{ ...line, fill: lineFill(fill, 'ink'), width: 1.5, ...(face.rough ? { dash: [2, 3] } : {}) }]
  })

export const colourOf = (fill: Fill, inks: Inks): string => ('paint' in fill ? fill.paint : inks[fill.ink])
