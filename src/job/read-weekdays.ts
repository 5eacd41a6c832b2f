/** Days of the week: `Mon-Fri`, `Sat, Sun`, `weekends`, `Friday–Monday`, to ISO numbers, Monday is 1. */

const names = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']

const [working, free] = [
  [1, 2, 3, 4, 5],
  [6, 7],
]

/** Several days in one word. Which days a working week has is another matter in each country: it is not guessed. */
const spans: Readonly<Record<string, readonly number[]>> = {
  weekday: working,
  weekend: free,
  'every day': [...working, ...free],
  'all days': [...working, ...free],
  daily: [...working, ...free],
}

/** Undefined when a word is no day: three letters or more of its English name. */
export const readWeekdays = (text: string): readonly number[] | undefined => {
  const days = new Set<number>()
  for (const piece of text.split(/[,;+&]|\band\b/i)) {
    if (piece.trim() === '') continue
    const span = spans[wordOf(piece)] ?? spanOf(piece)
    if (span === undefined) return undefined
    for (const day of span) days.add(day)
  }
  return days.size === 0 ? undefined : [...days].sort((a, b) => a - b)
}

/** A part of the day stands where days belong: `evenings`, `Sat morning`. */
export const namesHours = (text: string): boolean =>
  /\b(?:early|late|mornings?|noons?|afternoons?|evenings?|nights?|\d{1,2}:\d\d|\d{1,2}\s*[ap]m)\b/i.test(text)

/** One day, or all days from one to another, over Sunday when need be. */
const spanOf = (piece: string): readonly number[] | undefined => {
  const [first, last, ...more] = piece.split(/\s*(?:[-‐-―−]|\bto\b)\s*/i).map(dayOf)
  if (first === undefined || more.length > 0) return undefined
  if (/[-‐-―−]|\bto\b/i.test(piece) && last === undefined) return undefined
  const length = last === undefined ? 1 : ((last - first + 7) % 7) + 1
  return Array.from({ length }, (_, index) => ((first - 1 + index) % 7) + 1)
}

/** `On Saturdays` and `at the weekend` say no more than the day. */
const wordOf = (piece: string): string =>
  piece
    .trim()
    .toLowerCase()
    .replace(/^(?:on|at) (?:the )?/, '')
    .replace(/\.$/, '')
    .replace(/(?<=day|end)s$/, '')

const dayOf = (piece: string): number | undefined => {
  const word = wordOf(piece)
  const index = word.length < 3 ? -1 : names.findIndex((name) => name.startsWith(word))
  return index < 0 ? undefined : index + 1
}
