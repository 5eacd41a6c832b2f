/** Parts a text into runs that one typeface file can set: no face has every sign, and none has µ and č both. */
import type { PdfFont } from './press.ts'
import type { Face } from './type-styles.ts'

export type FontFile = { readonly name: string; readonly face: Face; readonly font: PdfFont }

export type Run = { readonly text: string; readonly file: FontFile }

/** Signs that no file has, and what stands for them. */
const standIns: Readonly<Record<string, string>> = {
  '\u202f': '\u2009',
  '\u2032': '\u2019',
  '\u2033': '\u201d',
  '\u2192': '\u2013',
  '\u2264': '<',
  '\u2265': '>',
}

/** The face asked for first, then lettering (which has µ), then text, then strong. */
const orderFor = (face: Face): readonly Face[] => [face, 'lettering', 'text', 'strong']

/** Control signs and the marks that turn text round have no glyph and are left out. */
const unseen = /[\p{Cc}\p{Cf}]/gu
const breaks = /[\t\n\r]/g

export function runsOf(text: string, face: Face, files: readonly FontFile[]): readonly Run[] {
  const candidates = orderFor(face).flatMap((each) => files.filter((file) => file.face === each))
  const runs: Run[] = []
  for (const sign of text.replace(breaks, ' ').replace(unseen, '')) {
    const { text: shown, file } = settle(sign, candidates)
    const last = runs.at(-1)
    if (last && last.file === file) runs[runs.length - 1] = { text: last.text + shown, file }
    else runs.push({ text: shown, file })
  }
  return runs
}

/** A sign that nothing has is set by the first file, which draws its box for an unknown sign. */
function settle(sign: string, candidates: readonly FontFile[]): Run {
  const first = candidates[0]
  if (!first) throw new Error('papers: no typeface given, expected at least one file')
  const tried = [sign, standIns[sign]].filter((each) => each !== undefined)
  for (const text of tried) {
    const file = candidates.find(({ font }) =>
      [...text].every((one) => font.hasGlyphForCodePoint(one.codePointAt(0) ?? 0)),
    )
    if (file) return { text, file }
  }
  return { text: sign, file: first }
}
