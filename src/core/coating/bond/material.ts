/** What a surface is made of, as rules see it: family and role of its sheet, whether it is old, and its state. */

/** What a coat is by its data sheet; `shade` and `colour` only matter to how it looks. */
export type Coat = { readonly family: string; readonly role: string; readonly shade?: string }

export type Age = 'old' | 'fresh'

export type Material = Coat & {
  /** `old` was on the boat before the job; `fresh` is put on in it. */
  readonly age: Age
  /** What is wrong or special with it: `tacky`, `silicone`, `wax`. */
  readonly states: readonly string[]
}

/** Family and role that a rule speaks of; without a role all of the family, `any` for every family. */
export type Selector = { readonly family: string; readonly role?: string }

export const coatRoles = [
  'laminating resin',
  'filler',
  'fairing',
  'primer',
  'tie coat',
  'finish',
  'non-skid',
  'thinner',
] as const

/**
 * Selectors as people write them: `epoxy primer, epoxy tie coat, one-part`.
 * @param text families with or without a role behind them, apart by commas.
 */
export function readSelectors(text: string): readonly Selector[] {
  return text
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map(readSelector)
}

function readSelector(text: string): Selector {
  const role = coatRoles.find((one) => text.endsWith(` ${one}`))
  return role === undefined ? { family: text } : { family: text.slice(0, -role.length - 1), role }
}

/** How closely selectors fit: 0 by any, 1 by family, 2 by family and role; -1 when none does. */
export function fit(selectors: readonly Selector[], coat: Coat): number {
  return Math.max(-1, ...selectors.map((one) => fitOf(one, coat)))
}

function fitOf({ family, role }: Selector, coat: Coat): number {
  if (role !== undefined && role !== coat.role) return -1
  if (family === 'any') return role === undefined ? 0 : 1
  if (family !== coat.family) return -1
  return role === undefined ? 1 : 2
}
