/** Those who want to hear that something has changed; each hears once for many changes in a row. */

export type Listeners = {
  readonly listen: (listener: () => void) => () => void
  /** Tells everybody, once the work at hand is done. */
  readonly tell: () => void
}

export function createListeners(): Listeners {
  const all = new Set<() => void>()
  let told = true
  return {
    listen: (listener) => {
      all.add(listener)
      return () => all.delete(listener)
    },
    tell: () => {
      if (!told) return
      told = false
      queueMicrotask(() => {
        told = true
        for (const listener of [...all]) listener()
      })
    },
  }
}
