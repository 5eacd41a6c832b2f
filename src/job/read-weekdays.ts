/** Days of the week: `Mon-Fri`, `Sat, Sun`, `Friday–Monday`, to ISO numbers, Monday is 1. */

const names = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']

/** Undefined when a word is no day: three letters or more of its English name. */
export const readWeekdays = (text: string): readonly number[] | undefined => {
  const days = new Set<number>()
  for (const piece of text.split(/[,;+&]|\band\b/i)) {
    if (piece.trim() === '') continue
    const span = spanOf(piece)
    if (span === undefined) return undefined
    for (const day of span) days.add(day)
  }
  return days.size === 0 ? undefined : [...days].sort((a, b) => a - b)
}

/** One day, or all days from one to another, over Sunday when need be. */
const spanOf = (piece: string): readonly number[] | undefined => {
  const [first, last, ...more] = piece.split(/\s*(?:[-‐-―−]|\bto\b)\s*/i).map(dayOf)
  if (first === undefined || more.length > 0) return undefined
  if (/[-‐-―−]|\bto\b/i.test(piece) && last === undefined) return undefined
  const length = last === undefined ? 1 : ((last - first + 7) % 7) + 1
  return Array.from({ length }, (_, index) => ((first - 1 + index) % 7) + 1)
}

const dayOf = (word: string): number | undefined => {
  const lower = word.trim().toLowerCase().replace(/\.$/, '')
  const index = lower.length < 3 ? -1 : names.findIndex((name) => name.startsWith(lower))
  return index < 0 ? undefined : index + 1
}
