/**
 * The press in Node: typefaces read from the installed packages, and the writer's browser build, so that the bytes
 * are the same everywhere. Node's own modules are asked for when it is called, so that a browser can load this file.
 */
import type { PaperFonts, PdfWriter, Press } from './press.ts'
import { unpackWoff } from './unpack-woff.ts'

/** The writer and the typefaces of the installed packages. Rejects when one of them is not there. */
export async function nodePress(): Promise<Press> {
  const find = await finder()
  const [writer, fonts] = await Promise.all([browserWriter(find), nodeFonts(find)])
  return { writer, fonts }
}

/** File URL of what a package name stands for. */
type Find = (name: string) => URL

async function finder(): Promise<Find> {
  const { createRequire } = await import('node:module')
  const { pathToFileURL } = await import('node:url')
  const { resolve } = createRequire(import.meta.url)
  return (name) => pathToFileURL(resolve(name))
}

async function browserWriter(find: Find): Promise<PdfWriter> {
  const build = new URL('./pdfkit.browser.mjs', find('pdfkit'))
  return (await import(/* @vite-ignore */ build.href)).default
}

async function nodeFonts(find: Find): Promise<PaperFonts> {
  const { readFile } = await import('node:fs/promises')
  const subsets = (family: string, weight: number): Promise<readonly Uint8Array[]> =>
    Promise.all(
      ['latin', 'latin-ext'].map(async (subset) => {
        const path = `@fontsource/${family}/files/${family}-${subset}-${weight}-normal.woff`
        return unpackWoff(new Uint8Array(await readFile(find(path))))
      }),
    )
  const [text, strong, lettering] = await Promise.all([
    subsets('atkinson-hyperlegible-next', 400),
    subsets('atkinson-hyperlegible-next', 600),
    subsets('dosis', 600),
  ])
  return { text, strong, lettering }
}
