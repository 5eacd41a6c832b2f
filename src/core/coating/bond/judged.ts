/** What judging a stack gives: its joints, its faults, and where pinholes show. */
import type { Fault } from './fault.ts'
import type { Bond } from './joint.ts'
import type { Material } from './material.ts'
import type { Act } from './rule.ts'

export type Branch = { readonly material: Material; readonly bond: Bond }

export type Joint = {
  /** The layer that is put on; `sun` where the last one meets the weather. */
  readonly layer: string
  readonly under: string
  readonly kind: 'on surface' | 'between coats' | 'weather'
  readonly material: Material
  /** Of what it may be the worst. */
  readonly bond: Bond
  /** One for each thing that an unknown surface may be. */
  readonly branches: readonly Branch[]
  /** What is done, in order. */
  readonly acts: readonly Act[]
}

export type Judged = {
  readonly joints: readonly Joint[]
  readonly faults: readonly Fault[]
  /** The first coat of this layer shows the pinholes: they are filled before anything else goes on. */
  readonly pinholesAfter?: string
}
