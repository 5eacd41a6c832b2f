/** Slows down whoever guesses passphrases: each wrong one past the first few doubles the wait, from that address. */

export type Tries = {
  /** Seconds to wait before this address may try again; 0 when it may. */
  readonly waitSeconds: (address: string) => number
  readonly failed: (address: string) => void
  readonly succeeded: (address: string) => void
}

const free = 4
const longestMs = 15 * 60_000
const mostAddresses = 2000

export function createTries(nowMs: () => number): Tries {
  const states = new Map<string, { readonly failures: number; readonly openAtMs: number }>()
  return {
    waitSeconds: (address) => Math.max(0, Math.ceil(((states.get(address)?.openAtMs ?? 0) - nowMs()) / 1000)),
    failed: (address) => {
      const failures = (states.get(address)?.failures ?? 0) + 1
      const waitMs = failures < free ? 0 : Math.min(longestMs, 1000 * 2 ** (failures - free))
      // Last in the map is newest: the oldest is forgotten first when there are too many.
      states.delete(address)
      states.set(address, { failures, openAtMs: nowMs() + waitMs })
      const oldest = states.keys().next().value
      if (states.size > mostAddresses && oldest !== undefined) states.delete(oldest)
    },
    succeeded: (address) => void states.delete(address),
  }
}
