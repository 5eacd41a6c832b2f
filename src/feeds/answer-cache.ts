/** Answers kept until the service says they are old, so that nobody is asked twice for the same. */

export type KeptAnswer = {
  readonly bytes: Uint8Array
  /** Until when it counts as new, ms. */
  readonly freshUntilMs: number
  /** When it was fetched, ms. */
  readonly fetchedAtMs: number
  /** What the service calls this state of it; sent back when asking again. */
  readonly lastModified?: string
}

export type AnswerCache = {
  readonly get: (url: string) => Promise<KeptAnswer | undefined>
  readonly put: (url: string, answer: KeptAnswer) => Promise<void>
}

/** How many answers are held; the oldest go first. */
const MOST_KEPT = 50

/** For a server: gone when it stops. */
export function memoryCache(): AnswerCache {
  const kept = new Map<string, KeptAnswer>()
  return {
    get: async (url) => kept.get(url),
    put: async (url, answer) => {
      kept.delete(url)
      kept.set(url, answer)
      for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old)
    },
  }
}
