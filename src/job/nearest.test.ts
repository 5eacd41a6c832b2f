import fc from 'fast-check'
import { expect, it } from 'vitest'
import { nearest } from './nearest.ts'

const known = ['lengthOverall', 'lengthWaterline', 'beam', 'beamTransom', 'draft']

it.each([
  ['lenghtOverall', 'lengthOverall'],
  ['LENGTHOVERALL', 'lengthOverall'],
  ['bema', 'beam'],
  ['beams', 'beam'],
  ['drat', 'draft'],
])('%s is taken for %s', (found, wanted) => expect(nearest(found, known)).toBe(wanted))

it.each(['colour', 'x', '', 'zzzzzzzzzzzz'])('%j is like none of them', (found) =>
  expect(nearest(found, known)).toBeUndefined(),
)

it('a known word is its own nearest', () => {
  fc.assert(
    fc.property(fc.constantFrom(...known), (word) => {
      expect(nearest(word, known)).toBe(word)
    }),
  )
})

it('one letter more, less or changed in a long word is always seen', () => {
  const word = 'lengthOverall'
  for (let at = 0; at < word.length; at++) {
    for (const wrong of [
      `${word.slice(0, at)}#${word.slice(at)}`,
      word.slice(0, at) + word.slice(at + 1),
      `${word.slice(0, at)}#${word.slice(at + 1)}`,
    ]) {
      expect(nearest(wrong, known)).toBe(word)
    }
  }
})
