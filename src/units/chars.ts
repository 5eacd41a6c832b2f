/** Which character counts as a space, a minus, a letter, a quote: people and word processors use many. */

const spaces = new Set(
  ' \t\n\r\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000',
)
const minuses = new Set('-\u2010\u2011\u2012\u2013\u2212')
const slashes = new Set('/\u2044\u2215')
const degrees = new Set('\u00b0\u00ba\u02da')
const singleQuotes = new Set("'\u2032\u2019\u2018\u00b4`")
const doubleQuotes = new Set('"\u2033\u201d\u201c')

export const isSpace = (c: string | undefined): boolean => c !== undefined && spaces.has(c)
export const isMinus = (c: string | undefined): boolean => c !== undefined && minuses.has(c)
export const isSlash = (c: string | undefined): boolean => c !== undefined && slashes.has(c)
export const isDegree = (c: string | undefined): boolean => c !== undefined && degrees.has(c)
export const isSingleQuote = (c: string | undefined): boolean => c !== undefined && singleQuotes.has(c)
export const isDoubleQuote = (c: string | undefined): boolean => c !== undefined && doubleQuotes.has(c)
export const isDigit = (c: string | undefined): boolean => c !== undefined && c >= '0' && c <= '9'

export const isLetter = (c: string | undefined): boolean =>
  c !== undefined && !isDegree(c) && /^\p{L}$/u.test(c)

export const skipSpaces = (text: string, at: number): number => {
  let end = at
  while (isSpace(text[end])) end++
  return end
}

export const skipDigits = (text: string, at: number): number => {
  let end = at
  while (isDigit(text[end])) end++
  return end
}
