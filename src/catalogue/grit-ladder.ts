/** Which grit is used for what, where neither the layer nor its sheet says. */
import type { Fields } from '#job'
import { rowWriter, type Table } from './row.ts'
import { applicationGuides, epoxies, oneParts, refitLogs, repairTexts, resinGuides } from './sources.ts'

export const ladderFields = {
  grit: { kind: 'ref', to: 'abrasives', need: 'required', doc: 'The grit taken when nobody says.' },
  coarsest: { kind: 'ref', to: 'abrasives', need: 'required', doc: 'Coarsest that is used for it.' },
  finest: { kind: 'ref', to: 'abrasives', need: 'required', doc: 'Finest that is used for it.' },
  disc: { kind: 'ref', to: 'consumables', need: 'required', doc: 'The abrasive it wears down.' },
} as const satisfies Fields

export type LadderFields = typeof ladderFields

const { from, assumed, row } = rowWriter<LadderFields>()

const all = {
  'grind-laminate': row(
    from(applicationGuides, { grit: 'P40', coarsest: 'P40', finest: 'P80', disc: 'grinder-disc-40' }),
  ),
  'grind-non-skid': row(assumed({ grit: 'P40', coarsest: 'P40', finest: 'P80', disc: 'grinder-disc-40' })),
  'key-laminate': row(from(repairTexts, { grit: 'P80', coarsest: 'P80', finest: 'P80', disc: 'disc-80' })),
  'long-board': row(assumed({ grit: 'P80', coarsest: 'P80', finest: 'P120', disc: 'long-board-strip' })),
  'before-filler': row(from(resinGuides, { grit: 'P80', coarsest: 'P60', finest: 'P80', disc: 'disc-80' })),
  'before-primer': row(from(epoxies, { grit: 'P120', coarsest: 'P80', finest: 'P150', disc: 'disc-120' })),
  'before-primer-on-fairing': row(
    from(epoxies, { grit: 'P80', coarsest: 'P80', finest: 'P120', disc: 'disc-80' }),
  ),
  'block-primer': row(assumed({ grit: 'P220', coarsest: 'P180', finest: 'P320', disc: 'disc-220' })),
  'between-primers': row(assumed({ grit: 'P220', coarsest: 'P180', finest: 'P320', disc: 'disc-220' })),
  'before-finish': row(assumed({ grit: 'P320', coarsest: 'P220', finest: 'P320', disc: 'disc-320' })),
  'before-dark-finish': row(assumed({ grit: 'P400', coarsest: 'P320', finest: 'P400', disc: 'disc-400' })),
  'before-one-part': row(
    from(oneParts, { grit: 'P220', coarsest: 'P120', finest: 'P320', disc: 'disc-220' }),
  ),
  'between-finishes': row(
    from(refitLogs, { grit: 'P400', coarsest: 'P320', finest: 'P400', disc: 'disc-400' }),
  ),
  'inside-panel': row(assumed({ grit: 'P320', coarsest: 'P220', finest: 'P320', disc: 'disc-320' })),
} satisfies Table<LadderFields, string>

export type GritPurpose = keyof typeof all

export const gritLadder: Table<LadderFields, GritPurpose> = all
