/** Faults of a stack as notes. */
import { breaks, type Fault, type Selector } from '#core/coating'
import type { Note, Severity } from '#core/note'

export type Names = {
  readonly zone: (id: string) => string
  readonly coat: (id: string) => string | undefined
}

/** So many zones are named, the others counted. */
const ZONES_NAMED = 3

/** Zones that share a stack, and what is on them. */
export type Faulty = {
  readonly zones: readonly string[]
  readonly existing: string
  readonly faults: readonly Fault[]
}

/** One note for each fault that is the same but for its zones, those that break a stack first. */
export function bondNotes(stacks: readonly Faulty[], names: Names): readonly Note[] {
  const told = new Map<
    string,
    { readonly zones: string[]; readonly fault: Fault; readonly existing: string }
  >()
  for (const { zones, existing, faults } of stacks) {
    for (const fault of faults) {
      const key = JSON.stringify([fault, names.coat(fault.under) === undefined ? existing : ''])
      const same = told.get(key)
      if (same) same.zones.push(...zones)
      else told.set(key, { zones: [...zones], fault, existing })
    }
  }
  return [...told.values()]
    .sort((a, b) => Number(breaks(b.fault)) - Number(breaks(a.fault)))
    .map(({ fault, ...at }) => noteOf(fault, { ...at, names }))
}

type On = { readonly zones: readonly string[]; readonly existing: string; readonly names: Names }

function noteOf(fault: Fault, on: On): Note {
  const { code, severity, own } = about(fault)
  const source = 'source' in fault ? fault.source : undefined
  return {
    code,
    severity,
    data: { ...place(fault, on), ...own },
    ...(source === undefined ? {} : { source }),
  }
}

/** Where: names of the coats, the kind of an old surface, the first zones and how many more. */
function place({ layer, under }: Fault, { zones, existing, names }: On): Note['data'] {
  const shown = zones.slice(0, ZONES_NAMED).map(names.zone)
  const below = names.coat(under)
  return {
    layer,
    name: names.coat(layer) ?? layer,
    zones: shown.join(', '),
    more: zones.length - shown.length,
    on: below === undefined ? 'ground' : 'coat',
    under: below ?? '',
    oldSurface: existing,
  }
}

type About = { readonly code: string; readonly severity: Severity; readonly own: Note['data'] }

/** Kinds of coat as words know them: `epoxy primer`. */
const kindsOf = (selectors: readonly Selector[]): string =>
  selectors
    .map(({ family, role }) => (role === undefined ? family : `${family} ${role}`))
    .slice(0, 1)
    .join(', ')

const fixOf = (fault: { readonly tie: readonly Selector[]; readonly clear?: readonly string[] }) => ({
  tie: fault.tie.length > 0,
  coatKinds: kindsOf(fault.tie),
  clear: (fault.clear ?? []).length > 0,
  bondFixes: (fault.clear ?? []).join(', '),
})

type Span = { readonly coarsest: { readonly name: string }; readonly finest: { readonly name: string } }

const spanOf = ({ coarsest, finest }: Span): Note['data'] => ({
  coarsest: coarsest.name,
  finest: finest.name,
  span: coarsest.name === finest.name ? 'one' : 'many',
})

function about(fault: Fault): About {
  switch (fault.kind) {
    case 'fails':
      return {
        code: 'buildup.bondFails',
        severity: 'fault',
        own: { bondReason: fault.reason, ...fixOf(fault) },
      }
    case 'may fail':
      return {
        code: 'buildup.bondMayFail',
        severity: 'missing',
        own: { bondReason: fault.reason, oldCoats: fault.on.join(', '), ...fixOf(fault) },
      }
    case 'not topcoated':
      return {
        code: 'buildup.notTopcoated',
        severity: 'fault',
        own: { bondReason: fault.reason, ...fixOf(fault) },
      }
    case 'not sanded':
      return {
        code: 'buildup.notSanded',
        severity: 'fault',
        own: spanOf(fault),
      }
    case 'between not sanded':
      return { code: 'buildup.betweenNotSanded', severity: 'fault', own: { finest: fault.finest.name } }
    case 'too coarse':
    case 'too fine':
      return {
        code: fault.kind === 'too coarse' ? 'buildup.gritCoarse' : 'buildup.gritFine',
        severity: 'notice',
        own: { grit: fault.grit.name, ...spanOf(fault) },
      }
    case 'window never open':
      return {
        code: 'buildup.windowNeverOpen',
        severity: 'fault',
        own: { leastHours: fault.leastH, mostHours: fault.mostH },
      }
    case 'film over':
    case 'build over':
      return {
        code: fault.kind === 'film over' ? 'buildup.filmOver' : 'buildup.buildOver',
        severity: 'fault',
        own: { dryFilmUm: fault.filmM * 1e6, mostUm: fault.mostM * 1e6 },
      }
    case 'colour shows':
      return {
        code: 'buildup.colourShows',
        severity: 'notice',
        own: { coats: fault.coats, wanted: fault.wanted, colour: fault.over[0] ?? '' },
      }
    case 'out of order':
      return { code: 'buildup.outOfOrder', severity: 'fault', own: { bondReason: fault.reason } }
    case 'untold':
      return { code: 'buildup.bondUntold', severity: 'uncovered', own: {} }
    case 'disputed':
      return {
        code: 'buildup.bondDisputed',
        severity: 'notice',
        own: { for: fault.for, against: fault.against },
      }
    case 'only':
      return { code: 'buildup.bondOnly', severity: 'notice', own: { bondOnly: fault.only } }
  }
}
