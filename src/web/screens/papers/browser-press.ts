/** The press in the browser: the PDF writer and the typefaces, fetched when the first paper is made. */

import textLatin from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url'
import strongLatin from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-600-normal.woff?url'
import textExt from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url'
import strongExt from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-600-normal.woff?url'
import letteringLatin from '@fontsource/dosis/files/dosis-latin-600-normal.woff?url'
import letteringExt from '@fontsource/dosis/files/dosis-latin-ext-600-normal.woff?url'
import PdfKit from 'pdfkit'
import { type PdfWriter, type Press, unpackWoff } from '#papers'

export async function browserPress(): Promise<Press> {
  const [text, strong, lettering] = await Promise.all([
    fontsOf([textLatin, textExt]),
    fontsOf([strongLatin, strongExt]),
    fontsOf([letteringLatin, letteringExt]),
  ])
  return { writer: PdfKit as unknown as PdfWriter, fonts: { text, strong, lettering } }
}

const fontsOf = (urls: readonly string[]): Promise<readonly Uint8Array[]> =>
  Promise.all(urls.map(async (url) => unpackWoff(new Uint8Array(await (await fetch(url)).arrayBuffer()))))
