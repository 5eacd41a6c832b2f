/** Small texts that the browser keeps for this device alone; undefined where it keeps nothing. */
export function browserShelf(): Storage | undefined {
  try {
    return globalThis.localStorage
  } catch {
    return undefined
  }
}
