import { expect, it } from 'vitest'
import { type Migration, migrate } from './migrate.ts'
import type { RawDocument } from './raw.ts'

/** Made up for this test: version 2 calls the place of the boat `stand`. */
const renamePlace: Migration = {
  from: 1,
  apply: (raw) => {
    const { place, ...rest } = raw.work
    return { ...raw, work: place ? { ...rest, stand: place } : rest }
  },
}
const addWidth: Migration = {
  from: 2,
  apply: (raw) => ({ ...raw, work: { ...raw.work, stand: { ...raw.work.stand, width: '3 m' } } }),
}
const steps = { steps: [addWidth, renamePlace], newest: 3 }
const old: RawDocument = { hardstand: '1', work: { place: { shelter: 'shed' } } }

it('an older document goes through every step in turn', () => {
  expect(migrate(old, steps)).toEqual({
    document: { hardstand: '3', work: { stand: { shelter: 'shed', width: '3 m' } } },
    newer: false,
    unclear: false,
  })
})

it('the document that is migrated stays as it was', () => {
  migrate(old, steps)
  expect(old).toEqual({ hardstand: '1', work: { place: { shelter: 'shed' } } })
})

it('a document of the newest version is the same object afterwards', () => {
  const now: RawDocument = { hardstand: '3', work: {} }
  expect(migrate(now, steps).document).toBe(now)
})

it('a newer document is left alone and said to be newer', () => {
  const newer: RawDocument = { hardstand: '4', work: {} }
  expect(migrate(newer, steps)).toEqual({ document: newer, newer: true, unclear: false })
})

it.each(['', '0', '-1', '1.5', 'one', '1e3', '9999999'])('the version %j is unclear', (hardstand) => {
  expect(migrate({ hardstand, work: {} }, steps).unclear).toBe(true)
})
