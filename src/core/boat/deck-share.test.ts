import { expect, it } from 'vitest'
import { deckShare } from './deck-share.ts'

const flat = ['foredeck', 'side deck', 'cabin top', 'cockpit sole'] as const

it('the parts one walks on leave room for wells and coamings inside the sheer', () => {
  const all = flat.reduce((sum, kind) => sum + deckShare(kind, 20)!, 0)
  expect(all).toBeGreaterThan(0.6 * 20)
  expect(all).toBeLessThan(20)
})

it('says nothing of zones that have no usual size', () => {
  expect(deckShare('loose part', 20)).toBeUndefined()
  expect(deckShare('pad', 20)).toBeUndefined()
  expect(deckShare('toString', 20)).toBeUndefined()
})
