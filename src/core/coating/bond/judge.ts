/** Judges a stack layer on layer: what holds, how it is prepared, how long is waited, and every fault with its fix. */
import { actsAs } from './acts-as.ts'
import type { Fault } from './fault.ts'
import { filmFaults, hidingFaults } from './film-limits.ts'
import { type Bond, judgeBond, type Pair } from './joint.ts'
import type { Joint, Judged } from './judged.ts'
import type { Coat } from './material.ts'
import { orderFaults } from './order-faults.ts'
import type { BondBook } from './rule.ts'
import { sandingFaults, windowFaults } from './sanding.ts'
import { type Exposed, exposedAfter, materialOf, type Stack, type StackLayer } from './stack.ts'

/** What stands for the weather, as the last layer's upper neighbour. */
const sun = { family: 'sun', role: '' } as const

/** How a pair is judged: straight from the rules, or remembered. */
export type Judging = { readonly book: BondBook; readonly bondOf: (pair: Pair) => Bond }

/**
 * Judges a stack on what is there.
 * @param book rules as the catalogue ships them. @param stack layers from the boat outward; an empty one is judged
 * too. @returns a joint for each pair that touches, between coats and under the sky included, and every fault.
 */
export function judge(book: BondBook, stack: Stack): Judged {
  const judging: Judging = { book, bondOf: (pair) => judgeBond(book.rules, pair) }
  const joints: Joint[] = []
  const faults: Fault[] = []
  let below = stack.ground
  for (const layer of stack.layers) {
    const found = judgeLayer(judging, { below, layer, where: stack.where })
    joints.push(...found.joints)
    faults.push(...found.faults)
    if (layer.role !== 'thinner') below = exposedAfter(below, layer)
  }
  if (stack.weathers && stack.where === 'above water') {
    const laid = below.filter((exposed) => !stack.ground.includes(exposed))
    const under = laid.map((exposed) => jointUnderSky(judging, exposed))
    joints.push(...under.filter(({ bond }) => bond.verdict !== 'untold'))
    faults.push(...under.flatMap(skyFaults))
  }
  const pinholes = firstPrimer(stack)
  return { joints, faults, ...(pinholes === undefined ? {} : { pinholesAfter: pinholes }) }
}

export type Laid = {
  readonly below: readonly Exposed[]
  readonly layer: StackLayer
  readonly where: Stack['where']
}

type Found = { readonly joints: readonly Bare[]; readonly faults: readonly Fault[] }

/** A joint as far as holding goes, without what is done for it. */
type Bare = Omit<Joint, 'acts'>

/** One layer on all that it meets. */
export function judgeOnSurfaces(judging: Judging, { below, layer, where }: Laid): Found {
  const joints = below.map((exposed) => jointOn(judging, { exposed, layer, where }))
  return { joints, faults: joints.flatMap((joint, at) => faultsOn(joint, layer, below[at]!)) }
}

/** What a layer is by itself, whatever it lies on: its coats on each other, its film, its colour. */
export function judgeInItself(judging: Judging, layer: StackLayer, where: Stack['where']): Found {
  const { book } = judging
  const joints = layer.coats > 1 ? [betweenCoats(judging, layer, where)] : []
  return {
    joints,
    faults: [
      ...hidingFaults(book.hiding, layer),
      ...filmFaults(book.practice, layer),
      ...joints.flatMap((joint) => sandingFaults(joint, layer.between)),
    ],
  }
}

/** A wipe with solvent is no layer. */
function judgeLayer(
  judging: Judging,
  laid: Laid,
): { readonly joints: readonly Joint[]; readonly faults: readonly Fault[] } {
  const { below, layer, where } = laid
  const { order: rules } = judging.book
  if (layer.role === 'thinner')
    return { joints: [], faults: orderFaults(judging.book, { wipe: layer, below }) }
  const [on, inItself] = [judgeOnSurfaces(judging, laid), judgeInItself(judging, layer, where)]
  return {
    joints: [...on.joints, ...inItself.joints].map((joint) => {
      const sanding = joint.kind === 'between coats' ? layer.between : layer.before
      return { ...joint, acts: actsAs(joint.bond.preparation, { sanding, on: joint.material, rules }) }
    }),
    faults: [...on.faults, ...inItself.faults],
  }
}

/** Whether the weather spoils a coat that nothing covers. */
export const standsWeather = ({ bondOf }: Judging, coat: Coat): boolean =>
  bondOf({ under: materialOf(coat), over: sun, where: 'above water' }).verdict !== 'no'

type On = { readonly exposed: Exposed; readonly layer: StackLayer; readonly where: Stack['where'] }

function jointOn({ bondOf }: Judging, { exposed, layer, where }: On): Bare {
  const candidates = exposed.maybe.length > 0 ? exposed.maybe : [exposed.material]
  const branches = candidates.map((material) => ({
    material,
    bond: bondOf({ under: material, over: layer, where, cleared: exposed.cleared }),
  }))
  const worst = branches.reduce((found, one) => (rank(one.bond) > rank(found.bond) ? one : found))
  return {
    layer: layer.id,
    under: exposed.id,
    kind: 'on surface',
    material: exposed.material,
    bond: worst.bond,
    branches: exposed.maybe.length > 0 ? branches : [],
  }
}

const order: Readonly<Record<Bond['verdict'], number>> = { yes: 0, care: 1, untold: 2, no: 3 }
const rank = ({ verdict }: Bond): number => order[verdict]

function betweenCoats({ bondOf }: Judging, layer: StackLayer, where: Stack['where']): Bare {
  const material = materialOf(layer)
  const bond = bondOf({ under: material, over: layer, where })
  return {
    layer: layer.id,
    under: layer.id,
    kind: 'between coats',
    material,
    bond,
    branches: [],
  }
}

const jointUnderSky = ({ bondOf }: Judging, exposed: Exposed): Joint => ({
  layer: 'sun',
  under: exposed.id,
  kind: 'weather',
  material: exposed.material,
  bond: bondOf({ under: exposed.material, over: sun, where: 'above water' }),
  branches: [],
  acts: [],
})

function faultsOn(joint: Bare, layer: StackLayer, below: Exposed): readonly Fault[] {
  const at = { layer: joint.layer, under: joint.under }
  const { bond } = joint
  if (bond.verdict === 'untold') return [{ ...at, kind: 'untold' }]
  if (bond.verdict === 'no') return [failing(joint), ...disputes(joint)]
  return [
    ...disputes(joint),
    ...bond.preparation.only.map((only): Fault => ({ ...at, kind: 'only', only, source: sourceOf(bond) })),
    ...sandingFaults(joint, layer.before),
    ...windowFaults(joint, layer, below.clocks),
  ]
}

function failing({ layer, under, bond, branches }: Bare): Fault {
  const refused = bond.says.find((said) => said.verdict === 'no' && !said.dissent)
  const about = {
    layer,
    under,
    reason: refused?.reason ?? 'unknown',
    tie: bond.preparation.tie,
    clear: bond.preparation.clear,
    source: refused?.source ?? 'assumed',
  }
  const failed = branches.filter((branch) => branch.bond.verdict === 'no')
  return branches.length > 0 && failed.length < branches.length
    ? { ...about, kind: 'may fail', on: failed.map(({ material }) => material.family) }
    : { ...about, kind: 'fails' }
}

function disputes({ layer, under, bond: { disputed, says } }: Bare): readonly Fault[] {
  if (!disputed) return []
  const refused = new Set(says.flatMap(({ verdict, aspect }) => (verdict === 'no' ? [aspect] : [])))
  const torn = says.filter(
    ({ aspect }) =>
      refused.has(aspect) && says.some((other) => other.aspect === aspect && other.verdict !== 'no'),
  )
  const sources = (wanted: (verdict: string) => boolean) =>
    torn
      .filter(({ verdict }) => wanted(verdict))
      .map(({ source }) => source)
      .join('; ')
  return [
    {
      kind: 'disputed',
      layer,
      under,
      for: sources((verdict) => verdict !== 'no'),
      against: sources((verdict) => verdict === 'no'),
    },
  ]
}

const sourceOf = ({ says }: Bond): string => says[0]?.source ?? 'assumed'

const skyFaults = ({ under, bond }: Joint): readonly Fault[] =>
  bond.verdict === 'no'
    ? [
        {
          kind: 'not topcoated',
          layer: under,
          under,
          reason: bond.says[0]?.reason ?? 'unknown',
          tie: bond.preparation.tie,
          source: sourceOf(bond),
        },
      ]
    : []

const primers: ReadonlySet<string> = new Set(['primer', 'tie coat'])

/** The first primer that covers and that something else goes over. */
function firstPrimer({ layers }: Stack): string | undefined {
  const covering = layers.filter(({ covers, role }) => covers && role !== 'thinner')
  const first = covering.findIndex(({ role }) => primers.has(role))
  const over = covering[first]
  return over && (over.coats > 1 || first < covering.length - 1) ? over.id : undefined
}
