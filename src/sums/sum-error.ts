/** The error of the quick sums: what was given cannot be worked with. */

/**
 * `sums.missing` `sums.unknownInput` data `field`; `sums.outOfRange` `field`, `value` (SI), `dimension` and the
 * bounds that hold (`over`, `atLeast`, `atMost`); `sums.notANumber` `sums.notText` `sums.tooLong` `field`;
 * `sums.unknownSum` `text`, `known`; `sums.unknownSolvent` `text`, `known`; `sums.badPlace` `sums.badMoment`
 * `sums.badBearing` `sums.badSense` `field`, `text`; `sums.badTable` `text`, `part`; `sums.tooManyParts`
 * `field`, `text`, `parts`. Faults of a text or a table keep their own code (`units.…`, `cure.…`) with `field` added.
 */
export type SumErrorData = Readonly<Record<string, string | number>>

export class SumError extends Error {
  readonly code: string
  readonly data: SumErrorData

  constructor(code: string, data: SumErrorData, message: string) {
    super(message)
    this.name = 'SumError'
    this.code = code
    this.data = data
  }
}
