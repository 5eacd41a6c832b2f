/** Shapes to a PDF: the one place that knows the writer. Coordinates leave here in points, rounded to 1/1000. */
import { hatchDrawing } from './hatch.ts'
import { inks } from './inks.ts'
import { type DocumentInfo, type OpenDocument, openDocument } from './open-document.ts'
import { penRule } from './pens.ts'
import type { PdfDocument, Press } from './press.ts'
import { type Run, runsOf } from './runs.ts'
import type { AreaShape, CircleShape, Drawing, LineShape, Point, Shape, TextShape } from './shapes.ts'
import { textOptions } from './text-options.ts'
import { mmPerPt, type TypeStyle, typeStyle } from './type-styles.ts'

/** One file: pages of one size in mm. */
export type PdfSheets = {
  readonly info: DocumentInfo
  readonly size: readonly [width: number, height: number]
  readonly pages: readonly Drawing[]
}

export async function toPdf(sheets: PdfSheets, press: Press): Promise<Uint8Array> {
  const open = openDocument(press, sheets.info)
  const done = collect(open.document)
  const size = [points(sheets.size[0]), points(sheets.size[1])] as const
  for (const page of sheets.pages) {
    open.document.addPage({ size, margin: 0 })
    for (const shape of page) draw(open, shape)
  }
  open.document.end()
  return done
}

const points = (mm: number): number => Math.round((mm / mmPerPt) * 1000) / 1000

function collect(document: PdfDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  return new Promise((resolve, reject) => {
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    document.on('end', () => resolve(joined(chunks)))
    document.on('error', (error: Error) => reject(error))
  })
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
  let at = 0
  for (const chunk of chunks) {
    bytes.set(chunk, at)
    at += chunk.length
  }
  return bytes
}

function draw(open: OpenDocument, shape: Shape): void {
  if (shape.kind === 'line') drawLine(open.document, shape)
  else if (shape.kind === 'area') drawArea(open.document, shape)
  else if (shape.kind === 'circle') drawCircle(open.document, shape)
  else if (shape.kind === 'text') drawText(open, shape)
  else for (const part of hatchDrawing(shape)) draw(open, part)
}

function trace(document: PdfDocument, shapePoints: readonly Point[]): void {
  shapePoints.forEach(([x, y], index) => {
    if (index === 0) document.moveTo(points(x), points(y))
    else document.lineTo(points(x), points(y))
  })
}

function drawLine(document: PdfDocument, { points: through, pen, ink }: LineShape): void {
  if (through.length < 2) return
  trace(document, through)
  stroke(document, { pen, ink })
}

function drawArea(document: PdfDocument, { points: round, fill, pen, ink }: AreaShape): void {
  if (fill) {
    trace(document, round)
    document.closePath().fill(inks[fill])
  }
  if (pen) {
    trace(document, round)
    document.closePath()
    stroke(document, { pen, ink: ink ?? 'ink' })
  }
}

function drawCircle(document: PdfDocument, { at, radius, fill, pen, ink }: CircleShape): void {
  const round = () => document.circle(points(at[0]), points(at[1]), points(radius))
  if (fill) round().fill(inks[fill])
  if (pen) {
    round()
    stroke(document, { pen, ink: ink ?? 'ink' })
  }
}

type Line = Pick<LineShape, 'pen' | 'ink'>

function stroke(document: PdfDocument, { pen, ink }: Line): void {
  const { width, dash } = penRule(pen)
  document.lineWidth(points(width)).lineCap('butt').lineJoin('miter')
  if (dash) document.dash(dash.map(points), { phase: 0 })
  document.stroke(inks[ink])
  if (dash) document.undash()
}

function drawText({ document, files }: OpenDocument, shape: TextShape): void {
  const style = typeStyle(shape.style)
  const runs = runsOf(shape.text, style.face, files)
  const measured = runs.length > 1 || shape.align !== 'left'
  const widths = measured ? runs.map((run) => runWidth(document, run, style)) : []
  const whole = widths.reduce((sum, width) => sum + width, 0)
  let x = points(shape.at[0]) - whole * { left: 0, centre: 0.5, right: 1 }[shape.align]
  runs.forEach(({ text, file }, index) => {
    document.font(file.name).fontSize(style.sizePt).fillColor(inks[shape.ink])
    document.text(text, x, points(shape.at[1]), {
      ...textOptions(text, style),
      lineBreak: false,
      baseline: 'alphabetic',
    })
    x += widths[index] ?? 0
  })
}

const runWidth = (document: PdfDocument, { text, file }: Run, style: TypeStyle): number =>
  document.font(file.name).fontSize(style.sizePt).widthOfString(text, textOptions(text, style))
