/** Who signed in, as a cookie that says what they may see until when, signed so that nobody can write their own. */
import { createHash, createHmac, timingSafeEqual } from 'node:crypto'
import type { Sees } from '#replica'
import type { Passphrases } from '../options.ts'

export type Session = {
  readonly sees: Sees
  /** When it ends, milliseconds since 1970; infinite where nobody has to sign in. */
  readonly untilMs: number
}

export type Sessions = {
  /** A passphrase is asked for. */
  readonly closed: boolean
  /** Of the bearer of these cookies; undefined when they have to sign in first. */
  readonly sessionOf: (cookies: string | undefined) => Session | undefined
  /** What a passphrase opens; undefined for a wrong one. */
  readonly opened: (passphrase: string) => Sees | undefined
  /** `Set-Cookie` for somebody who gave a passphrase. */
  readonly cookie: (sees: Sees, options: { readonly secure: boolean }) => string
  /** `Set-Cookie` that forgets them. */
  readonly noCookie: string
}

const name = 'hardstand_session'
const days = 180
const dayMs = 86_400_000
const attributes = 'Path=/; HttpOnly; SameSite=Strict'

export function createSessions({
  passphrases,
  key,
  nowMs,
}: {
  readonly passphrases: Passphrases
  readonly key: Uint8Array
  readonly nowMs: () => number
}): Sessions {
  const levels: readonly Sees[] = ['all', 'work']
  // The passphrase is in the key: a new one signs everybody out who had the old one.
  const signed = (sees: Sees, until: string): string =>
    createHmac('sha256', key)
      .update(`${sees}\n${until}\n${sha256(passphrases[sees] ?? '').toString('hex')}`)
      .digest('base64url')
  const read = (value: string): Session | undefined => {
    const [sees, until = '', signature = ''] = value.split('.')
    const level = levels.find((known) => known === sees)
    if (level === undefined || passphrases[level] === undefined) return undefined
    if (!/^\d{1,15}$/.test(until) || !same(signature, signed(level, until))) return undefined
    return Number(until) > nowMs() ? { sees: level, untilMs: Number(until) } : undefined
  }
  const closed = passphrases.all !== undefined
  return {
    closed,
    sessionOf: (cookies) =>
      closed ? read(cookieOf(cookies ?? '')) : { sees: 'all', untilMs: Number.POSITIVE_INFINITY },
    opened: (passphrase) =>
      levels
        // Both are compared, always, so that the time tells nothing.
        .map((level) => ({
          level,
          opens: same(passphrase, passphrases[level] ?? '') && level in passphrases,
        }))
        .find(({ opens }) => opens)?.level,
    cookie: (sees, { secure }) => {
      const until = String(nowMs() + days * dayMs)
      const value = `${sees}.${until}.${signed(sees, until)}`
      return `${name}=${value}; Max-Age=${days * 86_400}; ${attributes}${secure ? '; Secure' : ''}`
    },
    noCookie: `${name}=; Max-Age=0; ${attributes}`,
  }
}

const sha256 = (text: string): Buffer => createHash('sha256').update(text, 'utf8').digest()

/** By their hashes, so that neither length nor the place of the first difference shows in the time taken. */
const same = (a: string, b: string): boolean => timingSafeEqual(sha256(a), sha256(b))

function cookieOf(cookies: string): string {
  const found = cookies
    .slice(0, 8192)
    .split(';')
    .map((pair) => pair.trim())
    .find((pair) => pair.startsWith(`${name}=`))
  return found?.slice(name.length + 1) ?? ''
}
