/** What a plan was made from: the app's version and a hash of every input, on every result and paper. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import type { Catalogue } from '#catalogue'
import type { HourlySeries } from '#core/climate'
import type { Log, MoneyTerms, Work } from '#job'
import type { Stage } from './remember.ts'
import type { Stamp } from './types.ts'

export type StampInput = {
  readonly work: Work
  readonly money: MoneyTerms | undefined
  readonly log: Log
  readonly weather: HourlySeries | undefined
  readonly catalogue: Catalogue
  readonly nowMs: number
  readonly seed: number
  readonly app: string
}

type Hashing = { readonly value: unknown }

/** A stage a value, so that only what changed is hashed again. */
const hashStage = (name: string): Stage<Hashing, string> => ({
  name: `stamp ${name}`,
  run: ({ value }) => hashOf(value),
})

export const workHash = hashStage('work')
export const moneyHash = hashStage('money')
export const logHash = hashStage('log')
export const weatherHash = hashStage('weather')
export const catalogueHash = hashStage('catalogue')

/** SHA-256 over JSON with sorted keys: the order in which a replica keeps its keys does not count. */
export const hashOf = (value: unknown): string =>
  bytesToHex(sha256(utf8ToBytes(JSON.stringify(value, sorted))))

function sorted(_key: string, value: unknown): unknown {
  if (ArrayBuffer.isView(value)) return Array.from(value as unknown as ArrayLike<number>)
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
}

/** The first characters are enough to tell two plans apart on paper. */
export const shortHash = (hash: string): string => hash.slice(0, 8)

export type StampParts = Pick<Stamp, 'work' | 'log' | 'catalogue'> & {
  readonly money?: string
  readonly weather?: string
}

export const stampOf = (input: Pick<StampInput, 'nowMs' | 'seed' | 'app'>, parts: StampParts): Stamp => ({
  app: input.app,
  ...parts,
  nowMs: input.nowMs,
  seed: input.seed,
})
