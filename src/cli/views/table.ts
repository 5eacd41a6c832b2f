/** Rows of cells as aligned lines: text left, figures right. */

const widthOf = (text: string): number => [...text].length

export type Align = 'left' | 'right'

export function table(rows: readonly (readonly string[])[], aligns: readonly Align[]): readonly string[] {
  const widths = aligns.map((_, column) => Math.max(0, ...rows.map((row) => widthOf(row[column] ?? ''))))
  return rows.map((row) =>
    aligns
      .map((align, column) => pad(row[column] ?? '', widths[column] ?? 0, align))
      .join('  ')
      .trimEnd(),
  )
}

function pad(text: string, width: number, align: Align): string {
  const space = ' '.repeat(Math.max(0, width - widthOf(text)))
  return align === 'left' ? text + space : space + text
}

/** A heading over its lines, an empty line before; nothing when there are no lines. */
export const section = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', heading.toUpperCase(), ...lines.map((line) => `  ${line}`)]

/** Characters that a line of text holds. */
export const WIDTH = 100

/** Breaks a sentence over lines of at most a hundred characters, or `width`, the later ones indented. */
export function wrap(text: string, indent = '', width = WIDTH): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && widthOf(line) + widthOf(word) + 1 > width) {
      lines.push(line)
      line = `${indent}${word}`
    } else {
      line = line === '' ? word : `${line} ${word}`
    }
  }
  return [...lines, line]
}
