/** Measures text as the press will set it, and breaks it into lines. */
import { openDocument } from './open-document.ts'
import type { Press } from './press.ts'
import { type Run, runsOf } from './runs.ts'
import { textOptions } from './text-options.ts'
import { mmPerPt, type StyleName, type TypeStyle, typeStyle } from './type-styles.ts'
import { breakLines } from './wrap.ts'

export type Setter = {
  /** Width in mm. */
  readonly width: (text: string, style: StyleName) => number
  /** Lines no wider than `width` mm; a word that is wider by itself is broken. */
  readonly wrap: (text: string, style: StyleName, width: number) => readonly string[]
  /** One line no wider than `width` mm, cut with an ellipsis when it has to be. */
  readonly fit: (text: string, style: StyleName, width: number) => string
}

export function createSetter(press: Press): Setter {
  const { document, files } = openDocument(press, { title: '', madeMs: 0, language: 'en' })
  const known = new Map<string, number>()
  const runWidth = ({ text, file }: Run, style: TypeStyle): number =>
    document.font(file.name).fontSize(style.sizePt).widthOfString(text, textOptions(text, style)) * mmPerPt
  const width = (text: string, name: StyleName): number => {
    const key = `${name}\n${text}`
    const found = known.get(key)
    if (found !== undefined) return found
    const style = typeStyle(name)
    const sum = runsOf(text, style.face, files).reduce((total, run) => total + runWidth(run, style), 0)
    known.set(key, sum)
    return sum
  }
  return {
    width,
    wrap: (text, style, most) => breakLines(text, { most, width: (part) => width(part, style) }),
    fit: (text, style, most) => cut(text, { most, width: (part) => width(part, style) }),
  }
}

type Measured = { readonly most: number; readonly width: (text: string) => number }

function cut(text: string, { most, width }: Measured): string {
  if (width(text) <= most) return text
  const signs = [...text]
  let length = signs.length
  while (length > 0 && width(`${signs.slice(0, length).join('').trimEnd()}…`) > most) length--
  return `${signs.slice(0, length).join('').trimEnd()}…`
}
