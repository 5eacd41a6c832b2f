/** A request that is not served, in the one shape of an error. */
import type { ApiError } from '#replica'

export type Refusal = {
  readonly kind: 'refusal'
  readonly status: number
  readonly code: string
  readonly data: Readonly<Record<string, string | number>>
  /** Methods that the address knows, for status 405; seconds to wait, for 429. */
  readonly headers?: Readonly<Record<string, string>>
}

export const refusal = (
  status: number,
  code: string,
  data: Refusal['data'] = {},
  headers: Readonly<Record<string, string>> = {},
): Refusal => ({ kind: 'refusal', status, code, data, headers })

/** Thrown inside a handler, where a value from outside is found wrong. */
export class Refused extends Error {
  readonly refusal: Refusal

  constructor(refused: Refusal) {
    super(refused.code)
    this.name = 'Refused'
    this.refusal = refused
  }
}

export const refuse = (...given: Parameters<typeof refusal>): never => {
  throw new Refused(refusal(...given))
}

export const bodyOf = ({ code, data }: Pick<Refusal, 'code' | 'data'>): string =>
  JSON.stringify({ error: { code, data } } satisfies ApiError)

/** What came from outside, short enough to be said back. */
export const shown = (text: string): string => text.replaceAll(/[^\x20-\x7e]/g, '?').slice(0, 100)
