/** What a plan was made from: the app's version and a hash of every input, on every result and paper. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import type { Catalogue } from '#catalogue'
import type { HourlySeries } from '#core/climate'
import type { Log, MoneyTerms, Work } from '#job'
import type { Runner, Stage } from './remember.ts'
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

/**
 * Hash of a value from the hashes of its parts. Each part is a stage of its own, so that an edit hashes again only
 * the section it is in.
 */
export function hashParts(run: Runner, name: string, whole: Readonly<Record<string, unknown>>): string {
  const parts = Object.keys(whole)
    .sort()
    .map((key) => [key, run(partHash(`stamp ${name} ${key}`), { value: whole[key] })] as const)
  return hashOf(parts)
}

const partHash = (name: string): Stage<{ readonly value: unknown }, string> => ({
  name,
  run: ({ value }) => hashOf(value),
})

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
  readonly typical?: string
}

export const stampOf = (input: Pick<StampInput, 'nowMs' | 'seed' | 'app'>, parts: StampParts): Stamp => ({
  app: input.app,
  ...parts,
  nowMs: input.nowMs,
  seed: input.seed,
})
