/** How a hazard is written down: what brings it, how bad it is, what is worn and done. Its words are in `words/`. */
import type { Sheet } from '#job'

export type Family = NonNullable<Sheet['family']>

/** Facts of a job, a step or an hour that bring a hazard; the plan says which hold. */
export const hazardFlags = {
  isocyanate: 'A sheet in use says its hardener holds isocyanates.',
  'sensitised person': 'Someone on the job is sensitised to isocyanates and such paint is planned.',
  'untrained person': 'Isocyanate paint is planned and somebody’s training is missing or run out.',
  catalyst: 'Peroxide catalyst is measured out.',
  'catalysed leftovers': 'Something mixed is left in a pot.',
  solvent: 'Thinner or wiping solvent is open.',
  'air near flash point': 'Air in the shelter is within a few degrees of a flash point, or over it.',
  'closed space': 'Work in a locker, a cabin, a bilge or a cockpit well.',
  sanding: 'Any sanding.',
  'laminate dust': 'Glass laminate is ground or cut.',
  'dry powder': 'Filler powder or bead is handled dry.',
  'old paint': 'Paint of unknown age is sanded.',
  antifouling: 'Antifouling is disturbed.',
  wipes: 'Solvent wipes are thrown away.',
  'oily rags': 'Rags with one-part paint or drying oil.',
  mixing: 'Something is poured, thinned or mixed.',
  'power tool': 'Sander, grinder, saw or heat tool.',
  staging: 'Work higher than is reached from the ground.',
  heat: 'A hot working day.',
  'coating in the open': 'Paint goes on out of doors.',
  'on stands': 'The boat stands on stands or props.',
  covered: 'A cover or tent is over the boat.',
  'fuel and cutting': 'A saw, drill or grinder cuts into a boat with a fuel tank.',
  'unvented flame': 'A heater burns in the same air.',
  'wet floor': 'The floor is wet and power tools are about.',
  'floor wetted over dust': 'A floor with dust on it is wetted.',
  'drains masked': 'Deck or cockpit drains are taped over.',
  neighbours: 'People live or work near.',
  'left alone': 'The boat carries something that is never sanded, filled or painted.',
  'structural finding': 'A finding may go deeper than the surface.',
  'waste to drain': 'Anything is washed, wet-sanded or poured away.',
} as const satisfies Readonly<Record<string, string>>

export type HazardFlag = keyof typeof hazardFlags

/** What is worn or stands ready; `words/` has `protection.…` for each. */
export const protections = [
  'gloves',
  'sleeves',
  'glasses',
  'goggles',
  'eyeWash',
  'vapourMask',
  'dustMask',
  'suppliedAir',
  'draught',
  'noSpark',
  'vacuumTool',
  'hearing',
  'helmet',
  'staging',
  'closedBin',
  'extinguisher',
  'residualCurrentBreaker',
  'water',
] as const

export type Protection = (typeof protections)[number]

export type HazardSeverity = 'danger' | 'warning' | 'caution' | 'notice'

export type Hazard = {
  readonly id: string
  /** `caution.…`; the sentence is in `words/`. */
  readonly code: `caution.${string}`
  /** Signal word of ANSI Z535.6. */
  readonly severity: HazardSeverity
  /** Where it is shown: before the step that brings it, or over the whole job. */
  readonly stands: 'step' | 'job'
  /** It holds when a material of one of these families is used, or one of the flags holds. */
  readonly families: readonly Family[]
  readonly flags: readonly HazardFlag[]
  readonly protection: readonly Protection[]
  /** SI numbers for the sentence, the unit in the key. */
  readonly data: Readonly<Record<string, number | string | boolean>>
  /** What was read, or `assumed`. */
  readonly source: string
  readonly certainty: 'typical' | 'assumed'
}

type Written = Omit<Hazard, 'id' | 'code' | 'families' | 'flags' | 'protection' | 'data' | 'certainty'> &
  Partial<Pick<Hazard, 'families' | 'flags' | 'protection' | 'data'>>

/** Fills a row out: the code follows the id, what is not named is empty. */
export function hazard(id: string, written: Written): Hazard {
  return {
    id,
    code: `caution.${id}`,
    severity: written.severity,
    stands: written.stands,
    families: written.families ?? [],
    flags: written.flags ?? [],
    protection: written.protection ?? [],
    data: written.data ?? {},
    source: written.source,
    certainty: written.source.startsWith('assumed') ? 'assumed' : 'typical',
  }
}
