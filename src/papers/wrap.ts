/** Breaks a text into lines at its spaces; thin and no-break spaces hold a figure and its unit together. */
export type Measure = { readonly most: number; readonly width: (text: string) => number }

export function breakLines(text: string, measure: Measure): readonly string[] {
  return text.split(/\r\n|\r|\n/).flatMap((paragraph) => breakParagraph(paragraph, measure))
}

/** Words are measured one by one, which is quicker than whole lines and as true: no face kerns across a space. */
function breakParagraph(text: string, measure: Measure): readonly string[] {
  const space = measure.width(' ')
  const lines: string[] = []
  let line = ''
  let used = 0
  for (const word of text.split(/[ \t]+/).filter((each) => each !== '')) {
    const width = measure.width(word)
    if (line !== '' && used + space + width <= measure.most) {
      line = `${line} ${word}`
      used += space + width
      continue
    }
    if (line !== '') lines.push(line)
    const pieces = width <= measure.most ? [word] : breakWord(word, measure)
    lines.push(...pieces.slice(0, -1))
    line = pieces.at(-1) ?? ''
    used = measure.width(line)
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line]
}

/** A word wider than the line is cut where it fills it; at least one sign goes on each line. */
function breakWord(word: string, { most, width }: Measure): readonly string[] {
  const pieces: string[] = []
  let piece = ''
  for (const sign of word) {
    if (piece !== '' && width(piece + sign) > most) {
      pieces.push(piece)
      piece = ''
    }
    piece += sign
  }
  return [...pieces, piece]
}
