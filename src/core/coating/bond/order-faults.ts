/** A wipe with solvent among the layers, held against the rules of order on everything that it meets. */
import type { Fault } from './fault.ts'
import { outOfOrder } from './order.ts'
import type { Act, BondBook } from './rule.ts'
import { type Exposed, isGrit, type StackLayer } from './stack.ts'

export type Wiped = {
  readonly wipe: StackLayer
  readonly below: readonly Exposed[]
}

/** Ground when its own sanding comes first, or when the boat was ground before any layer: laminate always is. */
export function orderFaults(book: BondBook, { wipe, below }: Wiped): readonly Fault[] {
  return below.flatMap((exposed) => {
    const bare = exposed.material.role === 'laminating resin'
    const acts: readonly Act[] = [...(isGrit(wipe.before) || bare ? preparedThen : []), 'solvent wipe']
    return outOfOrder(acts, { on: exposed.material, rules: book.order })
      .filter(({ at }) => acts[at] === 'solvent wipe')
      .map(
        ({ rule }): Fault => ({
          kind: 'out of order',
          layer: wipe.id,
          under: exposed.id,
          reason: rule.reason,
          source: rule.source,
        }),
      )
  })
}

const preparedThen: readonly Act[] = ['water wash', 'dewax', 'abrade']
