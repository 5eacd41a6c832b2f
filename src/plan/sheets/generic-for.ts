/** Which generic sheet stands behind a product: the one it names, else one of its kind. */
import type { Sheet } from '#job'
import type { GenericSheet } from './resolve-sheet.ts'

/** What does the same work, so that clocks and limits of the one stand in for the other. */
const kin: readonly (readonly string[])[] = [
  ['filler', 'fairing'],
  ['primer', 'tie coat'],
  ['finish', 'non-skid'],
]

/**
 * @param own.like comes first. Without it the first sheet of the same family and role stands in, then one of the same
 * family that does the same work: every figure of it is assumed, since nobody said that the product is like it.
 * @returns nothing where its kind is not in the catalogue, or nobody said what it is.
 */
export function genericFor(
  own: Pick<Sheet, 'like' | 'family' | 'role'>,
  sheets: ReadonlyMap<string, GenericSheet>,
): GenericSheet | undefined {
  if (own.like !== undefined) return sheets.get(own.like)
  const { family, role } = own
  if (family === undefined || role === undefined) return undefined
  const kindred = [...sheets.values()].filter(({ sheet }) => sheet.family === family)
  const roles = kin.find((group) => group.includes(role)) ?? [role]
  const found =
    kindred.find(({ sheet }) => sheet.role === role) ??
    kindred.find(({ sheet }) => roles.includes(sheet.role ?? ''))
  return found && { ...found, certainty: allAssumed(found) }
}

const allAssumed = ({ certainty }: GenericSheet): GenericSheet['certainty'] =>
  Object.fromEntries(Object.keys(certainty).map((key) => [key, 'assumed'] as const))
