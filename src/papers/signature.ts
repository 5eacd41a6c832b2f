/** Lines to sign on: who, date, signature. */
import type { Kit } from './kit.ts'
import { measureOf } from './page.ts'
import { line, textAt } from './shapes.ts'
import type { Strip } from './strips.ts'

export type Signer = { readonly role: string; readonly name: string }

export function signatures(kit: Kit, signers: readonly Signer[]): Strip {
  const { x, width } = measureOf(kit.page)
  const gap = 8
  const each = (width - gap * (signers.length - 1)) / Math.max(1, signers.length)
  return {
    height: 26,
    draw: (top) =>
      signers.flatMap(({ role, name }, index) => {
        const left = x + index * (each + gap)
        const rule = top + 19
        return [
          textAt([left, top + 4], kit.setter.fit(role, 'caption', each), 'caption', { ink: 'ink2' }),
          textAt([left, top + 8.6], kit.setter.fit(name, 'strong', each), 'strong'),
          line('medium', [left, rule], [left + each * 0.36, rule]),
          line('medium', [left + each * 0.42, rule], [left + each, rule]),
          textAt([left, rule + 3.6], kit.say.label('paper.signDate'), 'caption', { ink: 'ink2' }),
          textAt([left + each * 0.42, rule + 3.6], kit.say.label('paper.signature'), 'caption', {
            ink: 'ink2',
          }),
        ]
      }),
  }
}
