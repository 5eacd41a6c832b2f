/** What a server is made of, as its caller gives it. */
import type { FeedOptions } from '#feeds'
import type { Store } from '#store'
import type { ServerLimits } from './limits.ts'
import { ServerError } from './server-error.ts'

export type Passphrases = {
  /** Whoever has it sees everything; nobody is asked for anything when there is none. */
  readonly all?: string
  /** Whoever has it sees the work, never the prices. */
  readonly work?: string
}

/** What the server noticed, as a code of the words: for the log of whoever runs it. */
export type Tell = (event: {
  readonly code: string
  readonly data: Readonly<Record<string, string | number>>
}) => void

export type ServerOptions = {
  /** Stays the caller's: it is closed by whoever opened it, after the server. */
  readonly store: Store
  /** Version of the program. */
  readonly app: string
  /** Folder of the bundled pages. */
  readonly webFolder: string
  readonly passphrases: Passphrases
  /** Signs the cookies of those who signed in; they stay signed in for as long as it stays the same. */
  readonly sessionKey: Uint8Array
  /** Names under which the server is reached, beside those of this machine for itself. */
  readonly names: readonly string[]
  readonly limits: ServerLimits
  /** How weather services are asked, or that nobody is. */
  readonly feeds: FeedOptions
  readonly nowMs: () => number
  readonly tell: Tell
}

const leastLetters = 8
const leastKeyBytes = 32

/** Refuses a set-up that would not keep what it promises. */
export function checkOptions({ passphrases: { all, work }, sessionKey }: ServerOptions): void {
  if (work !== undefined && all === undefined)
    throw new ServerError(
      'server.workPassphraseAlone',
      {},
      'passphrase: one for the work alone, got none for everything, expected both',
    )
  for (const passphrase of [all, work]) {
    if (passphrase !== undefined && passphrase.length < leastLetters)
      throw new ServerError(
        'server.passphraseTooShort',
        { leastLetters },
        `passphrase: too short, got ${passphrase.length} letters, expected at least ${leastLetters}`,
      )
  }
  if (all !== undefined && all === work)
    throw new ServerError('server.passphrasesAlike', {}, 'passphrases: alike, expected two')
  if (sessionKey.length < leastKeyBytes)
    throw new ServerError(
      'server.sessionKeyTooShort',
      { leastBytes: leastKeyBytes },
      `session key: too short, got ${sessionKey.length} bytes, expected at least ${leastKeyBytes}`,
    )
}
