/** One question to a service: bounded in time and size, asked again when it may help, and never more often than asked. */
import type { AnswerCache, KeptAnswer } from './answer-cache.ts'

export type AskOptions = {
  readonly fetch: typeof fetch
  readonly cache: AnswerCache
  readonly clockMs: () => number
  readonly pause: (ms: number) => Promise<void>
  /** Who asks: a service may turn away who does not say. */
  readonly userAgent: string
  readonly timeoutMs: number
  /** How often in all, counting the first. */
  readonly attempts: number
  readonly mostBytes: number
}

export type FeedFault = {
  readonly code: 'feeds.unreachable' | 'feeds.late' | 'feeds.refused' | 'feeds.busy' | 'feeds.tooLarge'
  readonly data: Readonly<Record<string, number | string>>
}

export type Asked =
  | { readonly ok: true; readonly bytes: Uint8Array; readonly fetchedAtMs: number; readonly stale: boolean }
  | { readonly ok: false; readonly fault: FeedFault }

/** Without a word of the service an answer counts as new for so long. */
const USUALLY_FRESH_MS = 30 * 60_000
/** A service is never asked more often than this, whatever it says. */
const LEAST_FRESH_MS = 60_000
const FIRST_PAUSE_MS = 500
/** Longer than this nobody waits; the service is left alone until later. */
const LONGEST_PAUSE_MS = 10_000

/**
 * Asks for an address.
 * @returns the answer; where it cannot be had, the kept one, marked stale; else why not.
 */
export async function ask(url: URL, options: AskOptions): Promise<Asked> {
  const kept = await options.cache.get(url.href)
  if (kept && kept.freshUntilMs > options.clockMs()) return given(kept, false)
  let fault: FeedFault | undefined
  for (let attempt = 1; attempt <= options.attempts; attempt++) {
    const tried = await once(url, kept, options)
    if (tried.kind === 'answer') {
      await options.cache.put(url.href, tried.answer)
      return given(tried.answer, false)
    }
    fault = tried.fault
    const pauseMs = tried.pauseMs ?? FIRST_PAUSE_MS * 2 ** (attempt - 1)
    if (!tried.again || pauseMs > LONGEST_PAUSE_MS || attempt === options.attempts) break
    await options.pause(pauseMs)
  }
  return kept ? given(kept, true) : { ok: false, fault: fault! }
}

const given = ({ bytes, fetchedAtMs }: KeptAnswer, stale: boolean): Asked => ({
  ok: true,
  bytes,
  fetchedAtMs,
  stale,
})

type Tried =
  | { readonly kind: 'answer'; readonly answer: KeptAnswer }
  | { readonly kind: 'fault'; readonly fault: FeedFault; readonly again: boolean; readonly pauseMs?: number }

async function once(url: URL, kept: KeptAnswer | undefined, options: AskOptions): Promise<Tried> {
  const data = { host: url.host }
  try {
    const answer = await options.fetch(url, {
      // Where an answer points elsewhere, nobody goes: the services are known by name.
      redirect: 'error',
      signal: AbortSignal.timeout(options.timeoutMs),
      headers: {
        Accept: 'application/json, application/geo+json',
        'User-Agent': options.userAgent,
        ...(kept?.lastModified === undefined ? {} : { 'If-Modified-Since': kept.lastModified }),
      },
    })
    if (answer.status === 304 && kept) return kept304(answer, kept, options)
    if (!answer.ok) {
      await answer.body?.cancel()
      return refusedBy(answer, data)
    }
    const bytes = await bounded(answer, options.mostBytes)
    if (bytes === undefined) return fault('feeds.tooLarge', { ...data, mostBytes: options.mostBytes }, false)
    return { kind: 'answer', answer: { bytes, ...freshness(answer, options) } }
  } catch (error) {
    const late = error instanceof Error && error.name === 'TimeoutError'
    return late
      ? fault('feeds.late', { ...data, seconds: Math.round(options.timeoutMs / 1000) }, true)
      : fault('feeds.unreachable', data, true)
  }
}

const fault = (code: FeedFault['code'], data: FeedFault['data'], again: boolean): Tried => ({
  kind: 'fault',
  fault: { code, data },
  again,
})

const kept304 = (answer: Response, kept: KeptAnswer, options: AskOptions): Tried => ({
  kind: 'answer',
  answer: { ...kept, ...freshness(answer, options) },
})

/** Too many questions, or trouble over there, is worth another try; a question that is refused is not. */
function refusedBy({ status, headers }: Response, data: FeedFault['data']): Tried {
  if (status !== 429 && status < 500) return fault('feeds.refused', { ...data, status }, false)
  const seconds = Number(headers.get('retry-after') ?? Number.NaN)
  const busy = fault('feeds.busy', { ...data, status }, true)
  return Number.isFinite(seconds) && busy.kind === 'fault' ? { ...busy, pauseMs: seconds * 1000 } : busy
}

function freshness(answer: Response, { clockMs }: AskOptions): Omit<KeptAnswer, 'bytes'> {
  const now = clockMs()
  const maxAge = /max-age=(\d+)/.exec(answer.headers.get('cache-control') ?? '')?.[1]
  const expires = Date.parse(answer.headers.get('expires') ?? '')
  const until =
    maxAge !== undefined
      ? now + Number(maxAge) * 1000
      : Number.isNaN(expires)
        ? now + USUALLY_FRESH_MS
        : expires
  const lastModified = answer.headers.get('last-modified')
  return {
    fetchedAtMs: now,
    freshUntilMs: Math.max(until, now + LEAST_FRESH_MS),
    ...(lastModified === null ? {} : { lastModified }),
  }
}

/** Undefined when it grows over the most; what comes after that is not waited for. */
async function bounded(answer: Response, mostBytes: number): Promise<Uint8Array | undefined> {
  const chunks: Uint8Array[] = []
  let size = 0
  for await (const chunk of answer.body ?? []) {
    size += chunk.length
    if (size > mostBytes) return undefined
    chunks.push(chunk)
  }
  const whole = new Uint8Array(size)
  let at = 0
  for (const chunk of chunks) {
    whole.set(chunk, at)
    at += chunk.length
  }
  return whole
}
