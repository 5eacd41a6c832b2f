/** Names of shared documents, and who may have which. */
import { idPattern, type Sees, shopDocument } from '#replica'

export type DocumentKind = 'shop' | 'work' | 'money'

/** Undefined for a name that no document has. */
export function documentKind(name: string): DocumentKind | undefined {
  if (name === shopDocument) return 'shop'
  const at = name.indexOf(':')
  const kind = name.slice(0, Math.max(at, 0))
  if (kind !== 'work' && kind !== 'money') return undefined
  return idPattern.test(name.slice(at + 1)) ? kind : undefined
}

/** Prices are only for those who see everything. */
export const mayHave = (sees: Sees, name: string): boolean => {
  const kind = documentKind(name)
  return kind !== undefined && (kind !== 'money' || sees === 'all')
}
