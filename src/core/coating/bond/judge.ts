/** Judges a stack layer on layer: what holds, how it is prepared, how long is waited, and every fault with its fix. */
import { actsAs } from './acts-as.ts'
import type { Fault } from './fault.ts'
import { filmFaults, hidingFaults } from './film-limits.ts'
import { type Bond, judgeBond } from './joint.ts'
import type { Joint, Judged } from './judged.ts'
import { orderFaults } from './order-faults.ts'
import type { BondBook } from './rule.ts'
import { sandingFaults, windowFaults } from './sanding.ts'
import { type Exposed, exposedAfter, materialOf, type Stack, type StackLayer } from './stack.ts'

/** What stands for the weather, as the last layer's upper neighbour. */
const sun = { family: 'sun', role: '' } as const

/**
 * Judges a stack on what is there.
 * @param book rules as the catalogue ships them. @param stack layers from the boat outward; an empty one is judged
 * too. @returns a joint for each pair that touches, between coats and under the sky included, and every fault.
 */
export function judge(book: BondBook, stack: Stack): Judged {
  const joints: Joint[] = []
  const faults: Fault[] = []
  let below = stack.ground
  for (const layer of stack.layers) {
    if (layer.role === 'thinner') {
      faults.push(...orderFaults(book, { wipe: layer, below }))
      continue
    }
    const on = below.map((exposed) => jointOn(book, { exposed, layer, where: stack.where }))
    joints.push(...on)
    faults.push(
      ...on.flatMap((joint, at) => faultsOn(joint, layer, below[at]!)),
      ...hidingFaults(book.hiding, layer, below),
      ...filmFaults(book.practice, layer),
    )
    if (layer.coats > 1) {
      const between = betweenCoats(book, layer, stack.where)
      joints.push(between)
      faults.push(...sandingFaults(between, layer.between))
    }
    below = exposedAfter(below, layer)
  }
  const last = stack.layers.findLast((layer) => layer.role !== 'thinner')
  if (last && stack.weathers && stack.where === 'above water') {
    const laid = below.filter((exposed) => !stack.ground.includes(exposed))
    const under = laid.map((exposed) => jointUnderSky(book, exposed))
    joints.push(...under.filter(({ bond }) => bond.verdict !== 'untold'))
    faults.push(...under.flatMap(skyFaults))
  }
  const pinholes = firstPrimer(stack)
  return { joints, faults, ...(pinholes === undefined ? {} : { pinholesAfter: pinholes }) }
}

type On = { readonly exposed: Exposed; readonly layer: StackLayer; readonly where: Stack['where'] }

function jointOn(book: BondBook, { exposed, layer, where }: On): Joint {
  const candidates = exposed.maybe.length > 0 ? exposed.maybe : [exposed.material]
  const branches = candidates.map((material) => ({
    material,
    bond: judgeBond(book.rules, { under: material, over: layer, where, cleared: exposed.cleared }),
  }))
  const worst = branches.reduce((found, one) => (rank(one.bond) > rank(found.bond) ? one : found))
  return {
    layer: layer.id,
    under: exposed.id,
    kind: 'on surface',
    material: exposed.material,
    bond: worst.bond,
    branches: exposed.maybe.length > 0 ? branches : [],
    acts: actsAs(worst.bond.preparation, {
      sanding: layer.before,
      on: exposed.material,
      rules: book.order,
    }),
  }
}

const order: Readonly<Record<Bond['verdict'], number>> = { yes: 0, care: 1, untold: 2, no: 3 }
const rank = ({ verdict }: Bond): number => order[verdict]

function betweenCoats(book: BondBook, layer: StackLayer, where: Stack['where']): Joint {
  const material = materialOf(layer)
  const bond = judgeBond(book.rules, { under: material, over: layer, where })
  return {
    layer: layer.id,
    under: layer.id,
    kind: 'between coats',
    material,
    bond,
    branches: [],
    acts: actsAs(bond.preparation, { sanding: layer.between, on: material, rules: book.order }),
  }
}

const jointUnderSky = (book: BondBook, exposed: Exposed): Joint => ({
  layer: 'sun',
  under: exposed.id,
  kind: 'weather',
  material: exposed.material,
  bond: judgeBond(book.rules, { under: exposed.material, over: sun, where: 'above water' }),
  branches: [],
  acts: [],
})

function faultsOn(joint: Joint, layer: StackLayer, below: Exposed): readonly Fault[] {
  const at = { layer: joint.layer, under: joint.under }
  const { bond } = joint
  if (bond.verdict === 'untold') return [{ ...at, kind: 'untold' }]
  if (bond.verdict === 'no') return [failing(joint)]
  return [
    ...disputes(joint),
    ...bond.preparation.only.map((only): Fault => ({ ...at, kind: 'only', only, source: sourceOf(bond) })),
    ...sandingFaults(joint, layer.before),
    ...windowFaults(joint, layer, below.clocks),
  ]
}

function failing({ layer, under, bond, branches }: Joint): Fault {
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

function disputes({ layer, under, bond }: Joint): readonly Fault[] {
  if (!bond.disputed) return []
  const sources = (wanted: (verdict: string) => boolean) =>
    bond.says
      .filter(({ verdict, aspect }) => aspect === 'bond' && wanted(verdict))
      .map(({ source }) => source)
      .join('; ')
  const against = sources((verdict) => verdict === 'no')
  return against === ''
    ? []
    : [{ kind: 'disputed', layer, under, for: sources((verdict) => verdict !== 'no'), against }]
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
