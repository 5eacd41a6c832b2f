/**
 * What papers are printed with: the PDF writer and the bytes of the typefaces. A browser fetches them, Node reads
 * them from disk (`node-press.ts`); the rest of the room does not know which.
 */
import type { Face } from './type-styles.ts'

/** What is used of the PDF writer. */
export type PdfFont = {
  readonly hasGlyphForCodePoint: (code: number) => boolean
}
export type PdfDocument = {
  readonly addPage: (options: {
    readonly size: readonly [number, number]
    readonly margin: number
  }) => PdfDocument
  readonly registerFont: (name: string, bytes: Uint8Array) => PdfDocument
  readonly font: (name: string) => PdfDocument
  readonly fontSize: (size: number) => PdfDocument
  readonly widthOfString: (text: string, options: PdfTextOptions) => number
  readonly text: (text: string, x: number, y: number, options: PdfTextOptions) => PdfDocument
  readonly moveTo: (x: number, y: number) => PdfDocument
  readonly lineTo: (x: number, y: number) => PdfDocument
  readonly closePath: () => PdfDocument
  readonly circle: (x: number, y: number, radius: number) => PdfDocument
  readonly lineWidth: (width: number) => PdfDocument
  readonly lineCap: (cap: 'butt' | 'round' | 'square') => PdfDocument
  readonly lineJoin: (join: 'miter' | 'round' | 'bevel') => PdfDocument
  readonly dash: (length: readonly number[], options: { readonly phase: number }) => PdfDocument
  readonly undash: () => PdfDocument
  readonly stroke: (colour: string) => PdfDocument
  readonly fill: (colour: string) => PdfDocument
  readonly fillColor: (colour: string) => PdfDocument
  readonly on: (event: 'data' | 'end' | 'error', handler: (value: never) => void) => unknown
  readonly end: () => void
  /** The open typeface; not in the writer's documented surface, but the only way to ask for a glyph. */
  readonly _font: { readonly font: PdfFont }
}
export type PdfTextOptions = {
  readonly lineBreak?: boolean
  readonly baseline?: 'alphabetic'
  readonly features?: readonly string[]
  readonly characterSpacing?: number
}
export type PdfOptions = {
  /** None: one named here would be opened anew each time it is asked for by its registered name. */
  readonly font: null
  readonly autoFirstPage: boolean
  readonly margin: number
  readonly lang: string
  readonly info: Readonly<Record<string, string | Date>>
}
export type PdfWriter = new (options: PdfOptions) => PdfDocument

/** Font files of each face, unpacked (`unpackWoff`), the one asked first standing first. */
export type PaperFonts = Readonly<Record<Face, readonly Uint8Array[]>>

export type Press = { readonly writer: PdfWriter; readonly fonts: PaperFonts }
