/** The tables as queries see them. How they are made stands in the migrations of each database. */
import type { Generated } from 'kysely'

export type Tables = {
  readonly document_update: {
    /** Rises over all documents; never given twice. */
    readonly sequence: Generated<number>
    readonly document: string
    readonly bytes: Uint8Array
  }
  readonly log_entry: {
    readonly sequence: Generated<number>
    readonly job: string
    readonly id: string
    /** JSON. */
    readonly cells: string
  }
  readonly weather: {
    readonly hash: string
    readonly bytes: Uint8Array
  }
}
