/** Finds where a key or value of a tree stands in the text. */
import { keysOf } from './pointer.ts'
import type { Tree, TreeEntry, TreeMap } from './tree.ts'

export type FindOffset = (pointer: string, part: 'key' | 'value') => number | undefined

/** Where a pointer leads beyond the tree, the last key on the way has the place. Maps are indexed when first asked. */
export const offsetFinder = (tree: Tree | undefined): FindOffset => {
  if (tree === undefined) return () => undefined
  const indexes = new Map<TreeMap, ReadonlyMap<string, TreeEntry>>()
  return (pointer, part) => {
    let here: Tree = tree
    let keyAt = tree.at
    for (const key of keysOf(pointer)) {
      const entry: TreeEntry | undefined = here.kind === 'map' ? indexOf(indexes, here).get(key) : undefined
      if (entry === undefined) return keyAt
      keyAt = entry.at
      here = entry.value
    }
    return part === 'value' && here.kind !== 'map' ? here.at : keyAt
  }
}

const indexOf = (
  indexes: Map<TreeMap, ReadonlyMap<string, TreeEntry>>,
  map: TreeMap,
): ReadonlyMap<string, TreeEntry> => {
  const known = indexes.get(map) ?? new Map(map.entries.map((entry) => [entry.key, entry]))
  indexes.set(map, known)
  return known
}
