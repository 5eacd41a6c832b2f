import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { bondBook } from '#plan'
import { bondLabels } from '../src/words/bond-words.ts'

const { rules, order, guesses } = bondBook(catalogue)

describe('every reason, remedy and condition of a rule', () => {
  it('has words, and so has what goes between', () => {
    const keys = [
      ...[...rules, ...order].map(({ reason }) => `bondReason.${reason}`),
      ...rules.flatMap(({ clear }) => (clear === undefined ? [] : [`bondFix.${clear}`])),
      ...rules.flatMap(({ only }) => (only === undefined ? [] : [`bondOnly.${only}`])),
      ...rules.flatMap(({ tie: [first] }) =>
        first ? [`coatKind.${first.family}${first.role === undefined ? '' : ` ${first.role}`}`] : [],
      ),
      ...guesses.flatMap(({ maybe }) => maybe.map(({ family }) => `oldCoat.${family}`)),
    ]
    expect(keys.length).toBeGreaterThan(60)
    expect([...new Set(keys)].filter((key) => !Object.hasOwn(bondLabels, key))).toEqual([])
  })
})
