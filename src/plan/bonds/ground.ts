/** What the first layer of a zone meets: the old surface, what mends it, or the fresh paint of its neighbours. */
import type { CoatClocks, Exposed, GuessRule, Material } from '#core/coating'
import { hoursAt } from '#core/cure'
import { planningC, type Work } from '#job'
import { hostsOf } from '../steps/context.ts'
import type { BuildUps, Repairs, ResolvedSheet, ZoneArea } from '../types.ts'

export type Around = {
  readonly zones: readonly ZoneArea[]
  readonly given: Work['zones']
  readonly buildUps: BuildUps
  readonly repairs: Repairs
  readonly guesses: readonly GuessRule[]
}

const oldCoats: Readonly<Record<string, readonly [family: string, role: string]>> = {
  gelcoat: ['gelcoat', 'finish'],
  'one-part': ['one-part', 'finish'],
  'two-part': ['two-part polyurethane', 'finish'],
  'epoxy primer': ['epoxy', 'primer'],
  'bare laminate': ['polyester', 'laminating resin'],
  acrylic: ['acrylic', 'non-skid'],
  lacquer: ['lacquer', 'finish'],
  antifouling: ['antifouling', 'finish'],
}

const old = (family: string, role: string, states: readonly string[] = []): Material => ({
  family,
  role,
  age: 'old',
  states,
})

/** From the boat outward nothing is on yet. */
export function groundOf(zone: ZoneArea, around: Around): readonly Exposed[] {
  const painted = zone.how === 'marks' ? hostPaint(zone, around) : []
  if (painted.length > 0) return painted
  const ground = oldSurface(zone, around)
  const findings = around.repairs.repairs.filter((repair) => repair.zone === zone.id)
  const mended = findings.flatMap((repair) => {
    const sheet = around.buildUps.sheets.find((one) => one.id === repair.sheet)
    return sheet ? [freshOn(sheet, repair.finding)] : []
  })
  const siliconed = findings
    .filter(({ kind }) => kind === 'old silicone')
    .map(
      ({ finding }): Exposed => ({
        ...ground,
        id: finding,
        material: { ...ground.material, states: ['silicone'] },
        maybe: [],
        cleared: ['clean and drop test'],
      }),
    )
  return [ground, ...siliconed, ...mended]
}

function oldSurface(zone: ZoneArea, { given, guesses }: Around): Exposed {
  const rub = given.find(({ id }) => id === zone.id)?.solventRub ?? 'not tested'
  const known = oldCoats[zone.existing]
  const guess = guesses.find(({ shows }) => shows === rub)
  // A film that the rag took up is taken up by the solvent of a stronger paint too: one failed test, and it is stripped.
  const states = rub === 'softens' ? ['softened'] : []
  const maybe = known ? [] : (guess?.maybe ?? []).map(({ family, role = '' }) => old(family, role, states))
  const material = known ? old(...known, states) : old('unknown', '', states)
  return { id: 'ground', material, maybe, clocks: {}, colour: '', cleared: [] }
}

/** The last layers of the zones that a stripe or a panel is taped on, each kind once. */
function hostPaint(zone: ZoneArea, { zones, buildUps }: Around): readonly Exposed[] {
  const last = hostsOf({ zones }, zone).flatMap((host) => {
    const layer = buildUps.layers.findLast((one) => one.zone === host.id)
    const sheet = layer && buildUps.sheets.find((one) => one.id === layer.sheet)
    return layer && sheet ? [freshOn(sheet, layer.layer)] : []
  })
  return [...new Map(last.map((one) => [one.id, one])).values()]
}

const freshOn = (sheet: ResolvedSheet, id: string): Exposed => ({
  id,
  material: { ...coatOf(sheet), age: 'fresh', states: [] },
  maybe: [],
  clocks: clocksOf(sheet),
  colour: sheet.colour,
  cleared: [],
})

export const coatOf = ({ family, role, shade }: ResolvedSheet) => ({
  family,
  role,
  ...(shade === '' ? {} : { shade }),
})

export function clocksOf({ clocks }: ResolvedSheet): CoatClocks {
  const hours = (key: keyof typeof clocks, sense: 'least' | 'most'): number | undefined => {
    const table = clocks[key]?.value
    const found = table && hoursAt(table, planningC, sense).hours
    return found !== undefined && Number.isFinite(found) ? found : undefined
  }
  const named = {
    recoatLeastH: hours('recoatLeast', 'least'),
    recoatMostH: hours('recoatMost', 'most'),
    drySandH: hours('dryToSand', 'least'),
    fullCureH: hours('fullCure', 'least'),
  }
  return Object.fromEntries(Object.entries(named).filter(([, value]) => value !== undefined))
}
