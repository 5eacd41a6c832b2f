/** What a paper is made from, and what comes out. */
import type { Plan } from '#plan'

export type PageSize = 'A4' | 'Letter'

/** What the papers need of the job beside the plan. */
export type PaperJob = {
  readonly name: string
  readonly boatName: string
  readonly owner: string
  readonly shop: string
  readonly place: string
  /** Wanted launch, YYYY-MM-DD. */
  readonly launchDate?: string
  /** The finish the owner was promised, in words. */
  readonly finishWords: string
  /** How far off the finish is judged. */
  readonly inspectionDistanceM?: number
  readonly people: readonly { readonly id: string; readonly name: string }[]
  readonly units: 'metric' | 'us'
  /** BCP 47, for example `en-GB`. */
  readonly locale: string
}

export type PaperInput = {
  readonly plan: Plan
  readonly job: PaperJob
  readonly page: PageSize
  /** Of the day sheet, YYYY-MM-DD; the first working day when left out. */
  readonly date?: string
}

export type PaperKind = 'plan-summary' | 'day-sheet' | 'quote' | 'change-order' | 'shopping-list'

/** One file: a PDF, or the shopping list as CSV. */
export type Paper = { readonly name: string; readonly kind: PaperKind; readonly bytes: Uint8Array }
