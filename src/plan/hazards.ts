/** What each product and each kind of work can do to whom, before the work is drawn up. */
import type { Catalogue } from '#catalogue'
import type { Work } from '#job'
import type { Stage } from './remember.ts'
import type { BuildUps, Hazard, Hazards, Repairs, ResolvedSheet, Surfaces } from './types.ts'

export type HazardsInput = {
  readonly buildUps: BuildUps
  readonly surfaces: Surfaces
  readonly repairs: Repairs
  readonly boat: Work['boat']
  readonly place: Work['place']
  readonly people: Work['people']
  /** Local date on which planning begins; training must still be valid then. */
  readonly fromDate: string
  readonly catalogue: Catalogue
}

export const hazards: Stage<HazardsInput, Hazards> = { name: 'hazards', run: findHazards }

/** Flags that a kind of work brings wherever it is done. */
const flagsByKind: Readonly<Record<string, readonly string[]>> = {
  wash: ['solvent', 'wipes'],
  repair: ['sanding', 'laminate dust', 'power tool'],
  'fill-repair': ['mixing', 'dry powder'],
  sand: ['sanding', 'power tool'],
  'sand-between': ['sanding', 'power tool'],
  mend: ['sanding', 'power tool'],
  pinholes: ['sanding'],
  settle: ['sanding'],
  fill: ['mixing', 'dry powder'],
  coat: ['mixing', 'wipes', 'solvent', 'wet floor', 'floor wetted over dust'],
}

/** Kinds of step in which old coats are cut into. */
const cutting = ['wash', 'sand', 'repair']
const aloft = ['wash', 'sand', 'sand-between', 'mend', 'coat', 'mask', 'pinholes']

/** Hazards that only the hour's temperature brings: `cautions` looks for them once the days are set. */
const byAir = new Set(['flashPoint', 'heat'])

function findHazards(input: HazardsInput): Hazards {
  const jobFlags = flagsOfJob(input)
  const all = [...input.catalogue.hazards, ...input.catalogue.standingCautions]
  const found = all.flatMap((row): readonly Hazard[] => {
    const flags = new Set<string>(row.flags)
    const spread = zonesFor(input, row.id)
    const kinds = spread ? spread.kinds : kindsFor(flags)
    const hazard: Hazard = {
      id: row.id,
      code: row.code,
      severity: row.severity,
      data: row.data,
      protection: row.protection,
      source: row.source,
      sheets: input.buildUps.sheets
        .filter((sheet) => brings(sheet, row.families, flags))
        .map((sheet) => sheet.id),
      kinds,
      zones: spread ? spread.zones : 'any',
      job: row.stands === 'job' && [...flags].some((flag) => jobFlags.has(flag)),
    }
    return hazard.sheets.length > 0 || hazard.kinds.length > 0 || hazard.job || byAir.has(row.id)
      ? [hazard]
      : []
  })
  return { hazards: found, notes: [] }
}

const kindsFor = (flags: ReadonlySet<string>): readonly string[] =>
  Object.entries(flagsByKind).flatMap(([kind, own]) => (own.some((flag) => flags.has(flag)) ? [kind] : []))

function brings(sheet: ResolvedSheet, families: readonly string[], flags: ReadonlySet<string>): boolean {
  return families.includes(sheet.family) || (sheet.isocyanate && flags.has('isocyanate'))
}

/** Hazards that hang on where the work is, not only on what it is. */
function zonesFor(
  input: HazardsInput,
  id: string,
): { readonly kinds: readonly string[]; readonly zones: readonly string[] | 'any' } | undefined {
  const zones = (test: (zone: Surfaces['zones'][number]) => boolean) =>
    input.surfaces.zones.filter(test).map((zone) => zone.id)
  if (id === 'lead')
    return onZones(
      cutting,
      zones((zone) => ['one-part', 'two-part', 'lacquer', 'unknown'].includes(zone.existing)),
    )
  if (id === 'antifouling')
    return onZones(
      cutting,
      zones((zone) => ['bottom', 'boot-top'].includes(zone.kind) || zone.existing === 'antifouling'),
    )
  if (id === 'staging') return onZones(aloft, isHigh(input) ? zones((zone) => zone.kind === 'topsides') : [])
  if (id === 'drips')
    return onZones(['coat'], inTheOpen(input.place.shelter) ? zones((zone) => !zone.indoors) : [])
  if (id === 'fuelTank')
    return hasFuel(input.boat) ? { kinds: ['fuel', 'repair'], zones: 'any' } : onZones([], [])
  return undefined
}

/** A kind of work on no zone at all is no hazard. */
const onZones = (kinds: readonly string[], zones: readonly string[]) => ({
  kinds: zones.length > 0 ? kinds : [],
  zones,
})

const inTheOpen = (shelter: string): boolean => shelter === 'open' || shelter === 'cover'
const hasFuel = (boat: Work['boat']): boolean => !['none', 'electric'].includes(boat.fuel ?? 'unknown')

/** Keel off the ground by about this much on blocks; assumed. */
const BLOCKS_M = 0.3

/** The sheer stands higher than is reached from the ground. */
function isHigh({ boat, catalogue }: HazardsInput): boolean {
  const limit = catalogue.hazards.find((row) => row.id === 'staging')?.data.heightM
  const sheer = (boat.freeboardStem?.value ?? 0) + (boat.draft?.value ?? 0) + BLOCKS_M
  return typeof limit === 'number' && sheer > limit
}

function flagsOfJob(input: HazardsInput): ReadonlySet<string> {
  const { boat, place, people, repairs, buildUps } = input
  const isocyanate = buildUps.layers.some(
    (layer) => buildUps.sheets.find((sheet) => sheet.id === layer.sheet)?.isocyanate,
  )
  const untrained = people.some(
    (person) => person.trainedUntil === undefined || person.trainedUntil < input.fromDate,
  )
  const checks: readonly (readonly [string, boolean])[] = [
    ['on stands', true],
    ['neighbours', true],
    ['waste to drain', true],
    ['covered', place.shelter === 'cover'],
    ['unvented flame', place.heater === 'unvented flame'],
    [
      'drains masked',
      input.surfaces.zones.some((zone) => ['cockpit sole', 'side deck', 'foredeck'].includes(zone.kind)),
    ],
    ['left alone', repairs.fittings.some((fitting) => fitting.leaveAlone)],
    [
      'structural finding',
      repairs.repairs.some((repair) => ['soft core', 'crack', 'hole'].includes(repair.kind)),
    ],
    ['sensitised person', isocyanate && people.some((person) => person.sensitised === true)],
    ['untrained person', isocyanate && untrained],
    ['fuel and cutting', hasFuel(boat)],
  ]
  return new Set(checks.flatMap(([flag, holds]) => (holds ? [flag] : [])))
}
