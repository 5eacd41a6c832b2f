/** The order of the work on one surface, held against the rules of order. */
import { fit, type Material } from './material.ts'
import type { Act, OrderRule } from './rule.ts'

export type OutOfOrder = {
  readonly rule: OrderRule
  /** Place of the act in the list. */
  readonly at: number
}

/** The rules of order that hold on a surface. */
export const holdingOn = (rules: readonly OrderRule[], on: Material): readonly OrderRule[] =>
  rules.filter((rule) => fit(rule.on, on) >= 0 && (rule.age === undefined || rule.age === on.age))

/**
 * What is done in the wrong order.
 * @param acts one after the other, on one surface. @param on what that surface is.
 * @returns every act that lacks what has to come before it, or comes after what spoils it.
 */
export function outOfOrder(
  acts: readonly Act[],
  { on, rules }: { readonly on: Material; readonly rules: readonly OrderRule[] },
): readonly OutOfOrder[] {
  const holding = holdingOn(rules, on)
  return acts.flatMap((act, at) => {
    const before = acts.slice(0, at)
    return holding
      .filter((rule) => rule.act === act)
      .filter(
        ({ needs, notAfter }) =>
          (needs !== undefined && !before.includes(needs)) ||
          (notAfter !== undefined && before.includes(notAfter)),
      )
      .map((rule) => ({ rule, at }))
  })
}
