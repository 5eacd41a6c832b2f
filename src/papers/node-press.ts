/**
 * The press in Node: typefaces read from the installed packages, and the writer's browser build, so that the bytes
 * are the same everywhere.
 */
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import type { PaperFonts, PdfWriter, Press } from './press.ts'
import { unpackWoff } from './unpack-woff.ts'

const require = createRequire(import.meta.url)

export async function nodePress(): Promise<Press> {
  const [writer, fonts] = await Promise.all([browserWriter(), nodeFonts()])
  return { writer, fonts }
}

async function browserWriter(): Promise<PdfWriter> {
  const build = new URL('./pdfkit.browser.mjs', pathToFileURL(require.resolve('pdfkit')))
  return (await import(build.href)).default
}

export async function nodeFonts(): Promise<PaperFonts> {
  const [text, strong, lettering] = await Promise.all([
    subsets('atkinson-hyperlegible-next', 400),
    subsets('atkinson-hyperlegible-next', 600),
    subsets('dosis', 600),
  ])
  return { text, strong, lettering }
}

const subsets = (family: string, weight: number): Promise<readonly Uint8Array[]> =>
  Promise.all(
    ['latin', 'latin-ext'].map((subset) =>
      readFont(`${family}/files/${family}-${subset}-${weight}-normal.woff`),
    ),
  )

const readFont = async (path: string): Promise<Uint8Array> =>
  unpackWoff(new Uint8Array(await readFile(require.resolve(`@fontsource/${path}`))))
