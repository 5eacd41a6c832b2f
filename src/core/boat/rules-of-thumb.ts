/**
 * Areas by the short formulas printed in paint and chandlers' guides, to hold the worked surface against.
 * All of them are called approximate where they are printed.
 */

import type { Note } from '#core/note'

export type RuleZone = 'topsides' | 'bottom' | 'deck'

/** Metres: lengths, greatest beam, draft of the hull body, and mean freeboard. */
export type RuleSizes = {
  readonly lengthOverall: number
  readonly lengthWaterline: number
  readonly beam: number
  readonly draft: number
  readonly freeboard: number
}

export type RuleOfThumb = {
  readonly id: string
  readonly zone: RuleZone
  /** What the source says the rule is for. */
  readonly meantFor: 'any' | 'full-body' | 'motor-boat' | 'long-keel' | 'fin-keel'
  readonly area: (sizes: RuleSizes) => number
  readonly source: string
}

const chandlers = "Area formulas in chandlers' and paint suppliers' guides; stated as approximate"

const waterlineRule = ({ lengthWaterline, beam, draft }: RuleSizes): number =>
  lengthWaterline * (beam + draft)

/**
 * The rules. With the hull draft in place of the draft to the keel foot, the factors for long and fin keels read low.
 * Both sides and the transom are in the topsides; the deck rule makes no allowance for a cockpit.
 */
export const ruleTable: readonly RuleOfThumb[] = [
  {
    id: 'topsides.twiceLengthPlusBeam',
    zone: 'topsides',
    meantFor: 'any',
    area: ({ lengthOverall, beam, freeboard }) => 2 * (lengthOverall + beam) * freeboard,
    source: chandlers,
  },
  {
    id: 'deck.threeQuarters',
    zone: 'deck',
    meantFor: 'any',
    area: ({ lengthOverall, beam }) => 0.75 * lengthOverall * beam,
    source: chandlers,
  },
  {
    id: 'bottom.waterline085',
    zone: 'bottom',
    meantFor: 'motor-boat',
    area: (sizes) => 0.85 * waterlineRule(sizes),
    source: chandlers,
  },
  {
    id: 'bottom.waterline100',
    zone: 'bottom',
    meantFor: 'full-body',
    area: waterlineRule,
    source: chandlers,
  },
  {
    id: 'bottom.overall085',
    zone: 'bottom',
    meantFor: 'motor-boat',
    area: ({ lengthOverall, beam }) => 0.85 * lengthOverall * beam,
    source: chandlers,
  },
  {
    id: 'bottom.waterline075',
    zone: 'bottom',
    meantFor: 'long-keel',
    area: (sizes) => 0.75 * waterlineRule(sizes),
    source: chandlers,
  },
  {
    id: 'bottom.waterline050',
    zone: 'bottom',
    meantFor: 'fin-keel',
    area: (sizes) => 0.5 * waterlineRule(sizes),
    source: chandlers,
  },
]

export type RuleArea = Omit<RuleOfThumb, 'area'> & { readonly area: number }

/** Every rule's area in m² for the sizes; nonsense in gives nonsense out, never an exception. */
export const rulesOfThumb = (sizes: RuleSizes): readonly RuleArea[] =>
  ruleTable.map((rule) => ({ ...rule, area: rule.area(sizes) }))

export type RuleComparison = RuleArea & {
  readonly workedArea: number
  /** (worked − rule) / rule. */
  readonly differenceShare: number
}

export type RuleCheck = { readonly rows: readonly RuleComparison[]; readonly notes: readonly Note[] }

/** The guides differ among themselves by a quarter; past this the sizes deserve a second look. */
const noticedDifference = 0.2

const farFromAll = (rows: readonly RuleComparison[]): readonly Note[] => {
  const nearest = rows.reduce((best, row) =>
    Math.abs(row.differenceShare) < Math.abs(best.differenceShare) ? row : best,
  )
  if (!(Math.abs(nearest.differenceShare) > noticedDifference)) return []
  const { zone, id, area, workedArea, differenceShare, source } = nearest
  const data = { zone, rule: id, areaM2: workedArea, ruleAreaM2: area, differenceShare }
  return [{ code: 'boat.areaFarFromRule', severity: 'info', data, source }]
}

/** What a rule takes the hull for, where that is not plumb sides and a level sheer. */
const takenFor: Readonly<Record<string, string>> = {
  'bottom.waterline100': 'box',
  'bottom.waterline085': 'middling',
  'bottom.overall085': 'flat',
  'deck.threeQuarters': 'deck',
}

/** One rule of several that is far off, while another is near: why it reads otherwise hangs on the rule. */
const farFromOne = (rows: readonly RuleComparison[]): readonly Note[] => {
  if (farFromAll(rows).length > 0) return []
  return rows
    .filter(({ differenceShare }) => Math.abs(differenceShare) > noticedDifference)
    .map(({ zone, id, area, workedArea, differenceShare, source }) => ({
      code: 'boat.ruleDiffers',
      severity: 'info',
      data: {
        zone,
        rule: id,
        areaM2: workedArea,
        ruleAreaM2: area,
        differenceShare,
        takes: takenFor[id] ?? 'plumb',
      },
      source,
    }))
}

/** Worked areas, m², of the zones to compare. */
export type WorkedAreas = Readonly<Partial<Record<RuleZone, number>>>

/** The rules for keels take the draft to the keel foot, which a hull body has not got. */
const judges = ({ meantFor }: RuleComparison): boolean => meantFor !== 'long-keel' && meantFor !== 'fin-keel'

/**
 * Each worked area beside each rule for its zone; a note explains each rule for a hull body that is more than 20 % away, and says so once where even the nearest is.
 */
export const compareWithRules = (sizes: RuleSizes, worked: WorkedAreas): RuleCheck => {
  const rows = rulesOfThumb(sizes).flatMap((rule) => {
    const workedArea = worked[rule.zone]
    if (workedArea === undefined || !(rule.area > 0)) return []
    return [{ ...rule, workedArea, differenceShare: (workedArea - rule.area) / rule.area }]
  })
  const zones: readonly RuleZone[] = ['topsides', 'bottom', 'deck']
  const notes = zones.flatMap((zone) => {
    const own = rows.filter((row) => row.zone === zone && judges(row))
    return own.length > 0 ? [...farFromAll(own), ...farFromOne(own)] : []
  })
  return { rows, notes }
}
