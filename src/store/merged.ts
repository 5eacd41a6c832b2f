/** Calls the merge that was handed in, so that its failure is told as one of the store's. */
import { checkedMerged } from './checked.ts'
import type { MergeUpdates } from './port.ts'
import { StoreError } from './store-error.ts'

export function merged(
  document: string,
  given: { readonly updates: readonly Uint8Array[]; readonly merge: MergeUpdates },
): Uint8Array {
  return checkedMerged(document, mergeOrSay(document, given))
}

function mergeOrSay(
  document: string,
  { updates, merge }: { readonly updates: readonly Uint8Array[]; readonly merge: MergeUpdates },
): unknown {
  try {
    return merge(updates)
  } catch (error) {
    const text = error instanceof Error ? error.message : String(error)
    throw new StoreError(
      'store.mergeFailed',
      { document, text },
      `document: cannot be merged, got ${text}`,
      error,
    )
  }
}
