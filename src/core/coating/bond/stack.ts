/** A stack as it is judged: what is there, what was mended with what, and the layers from the boat outward. */
import type { Coat, Material } from './material.ts'
import type { Grit, Where } from './rule.ts'

/** Clocks of a coat at the temperature of planning, h. */
export type CoatClocks = {
  readonly recoatLeastH?: number
  /** Longest wait without sanding. */
  readonly recoatMostH?: number
  readonly drySandH?: number
  readonly fullCureH?: number
}

/** One surface that the next layer meets. */
export type Exposed = {
  /** `ground`, or the id of the layer or repair. */
  readonly id: string
  readonly material: Material
  /** What it may be, where nobody has found out: the stack is judged on each. */
  readonly maybe: readonly Material[]
  readonly clocks: CoatClocks
  readonly colour: string
  /** Remedies that are planned for it, by code. */
  readonly cleared: readonly string[]
}

/** Sanding before a layer or between its coats: a grit, `none` on purpose, or nothing said. */
export type Sanding = Grit | 'none' | undefined

export type StackLayer = Coat & {
  readonly id: string
  readonly coats: number
  /** It covers what lies below; a spot filling does not. */
  readonly covers: boolean
  readonly before: Sanding
  readonly between: Sanding
  readonly dryFilmM?: number
  readonly clocks: CoatClocks
  readonly colour: string
}

export type Stack = {
  readonly ground: readonly Exposed[]
  /** From the boat outward. */
  readonly layers: readonly StackLayer[]
  readonly where: Where
  /** The last layer is what the weather sees; not where another zone's paint goes over it. */
  readonly weathers: boolean
}

export const materialOf = (coat: Coat): Material => ({
  family: coat.family,
  role: coat.role,
  ...(coat.shade === undefined ? {} : { shade: coat.shade }),
  age: 'fresh',
  states: [],
})

/** What a layer leaves for the next one to meet: itself, and around a spot filling also what lay there before. */
export const exposedAfter = (below: readonly Exposed[], layer: StackLayer): readonly Exposed[] => {
  const own: Exposed = {
    id: layer.id,
    material: materialOf(layer),
    maybe: [],
    clocks: layer.clocks,
    colour: layer.colour,
    cleared: [],
  }
  return layer.covers ? [own] : [...below, own]
}

export const isGrit = (sanding: Sanding): sanding is Grit => sanding !== undefined && sanding !== 'none'
