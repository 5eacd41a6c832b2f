/** A name as it stands on a sheet: a line of it, however much was written there. */

const mostLetters = 60

export function shortName(name: string): string {
  const letters = [...name.slice(0, 4 * mostLetters)]
  return letters.length > mostLetters ? `${letters.slice(0, mostLetters).join('')}…` : name
}
