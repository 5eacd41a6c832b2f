/** Splits one line of which fields may stand in quotes. Written out, for the worker that plans carries it. */

/**
 * @param line without its line end. @param delimiter one letter.
 * @returns the fields; a quote that begins a field ends at the next single one, and two in it are one (RFC 4180). Blanks
 * between its end and the delimiter are passed over. A quote inside a plain field is a letter as any other. Undefined
 * where quotes do not close, or something else follows them.
 */
export function splitQuoted(line: string, delimiter: string): readonly string[] | undefined {
  const fields: string[] = []
  let at = 0
  for (;;) {
    if (line[at] !== '"') {
      const end = line.indexOf(delimiter, at)
      if (end < 0) return [...fields, line.slice(at)]
      fields.push(line.slice(at, end))
      at = end + 1
      continue
    }
    const close = closingQuote(line, at + 1)
    if (close === undefined) return undefined
    fields.push(line.slice(at + 1, close).replaceAll('""', '"'))
    let next = close + 1
    while (line[next] === ' ') next++
    if (next >= line.length) return fields
    if (line[next] !== delimiter) return undefined
    at = next + 1
  }
}

function closingQuote(line: string, from: number): number | undefined {
  for (let at = line.indexOf('"', from); at >= 0; at = line.indexOf('"', at + 2))
    if (line[at + 1] !== '"') return at
  return undefined
}
