/** Opens a PDF with its typefaces; everything that would differ from run to run is fixed. */
import type { PdfDocument, Press } from './press.ts'
import type { FontFile } from './runs.ts'
import { type Face, faces } from './type-styles.ts'

export type DocumentInfo = {
  readonly title: string
  /** When the plan was made, ms since 1970: stands as the date of the file. */
  readonly madeMs: number
  readonly language: string
}

export type OpenDocument = { readonly document: PdfDocument; readonly files: readonly FontFile[] }

export function openDocument(press: Press, info: DocumentInfo): OpenDocument {
  const made = new Date(info.madeMs)
  const document = new press.writer({
    font: null,
    autoFirstPage: false,
    margin: 0,
    lang: info.language,
    info: {
      Title: info.title,
      Producer: 'Hardstand',
      Creator: 'Hardstand',
      CreationDate: made,
      ModDate: made,
    },
  })
  const files = faces.flatMap((face) =>
    press.fonts[face].map((bytes, index) => register(document, { face, bytes, index })),
  )
  return { document, files }
}

type FaceFile = { readonly face: Face; readonly bytes: Uint8Array; readonly index: number }

function register(document: PdfDocument, { face, bytes, index }: FaceFile): FontFile {
  const name = `${face}${index}`
  document.registerFont(name, bytes)
  return { name, face, font: document.font(name)._font.font }
}
