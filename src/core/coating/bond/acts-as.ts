/** What is done before one coat, in order: what the joint asks for, and what the rules of order ask for besides. */
import type { Preparation } from './joint.ts'
import type { Material } from './material.ts'
import { holdingOn } from './order.ts'
import type { Act, OrderRule } from './rule.ts'
import { isGrit, type Sanding } from './stack.ts'

/**
 * Acts in the order they are done.
 * @param preparation what the rules of bonding ask for. @param planned.sanding the grit that is planned; where the
 * surface always wants one it is sanded in any case. @param planned.on the surface. @param planned.rules of order.
 */
export function actsAs(
  preparation: Preparation,
  {
    sanding,
    on,
    rules,
  }: { readonly sanding: Sanding; readonly on: Material; readonly rules: readonly OrderRule[] },
): readonly Act[] {
  const sanded = isGrit(sanding) || preparation.key === 'always'
  const asked: readonly (readonly [Act, boolean])[] = [
    ['clear', preparation.clear.length > 0],
    ['water wash', preparation.waterWash],
    ['dewax', preparation.dewax],
    ['abrade', sanded],
    ['dust off', true],
    ['solvent wipe', preparation.solvent !== 'never'],
    ['tack', true],
    ['coat', true],
  ]
  const holding = holdingOn(rules, on)
  return asked.reduce<readonly Act[]>(
    (acts, [act, wanted]) => (wanted ? withAct(acts, act, holding) : acts),
    [],
  )
}

/** The act after what it needs; left out where something before it forbids it. */
function withAct(acts: readonly Act[], act: Act, rules: readonly OrderRule[]): readonly Act[] {
  const own = rules.filter((rule) => rule.act === act)
  if (acts.includes(act) || own.some(({ notAfter }) => notAfter !== undefined && acts.includes(notAfter)))
    return acts
  const missing = own.flatMap(({ needs }) => (needs === undefined || acts.includes(needs) ? [] : [needs]))
  return [...acts, ...new Set(missing), act]
}
