import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dryFilm, practicalSpread, spreadingRate, wetFilm, wetFilmFromSpread } from './film.ts'

const film = fc.double({ min: 1e-6, max: 1e-2, noNaN: true })
const volumeSolids = fc.double({ min: 0.05, max: 1, noNaN: true })
const thinnerShare = fc.double({ min: 0, max: 0.5, noNaN: true })

describe('film', () => {
  it('comes back from wet to dry', () => {
    fc.assert(
      fc.property(film, volumeSolids, thinnerShare, (dry, solids, thinner) => {
        const paint = { volumeSolids: solids, thinnerShare: thinner }
        const wet = wetFilm({ ...paint, dryFilm: dry })
        expect(dryFilm({ ...paint, wetFilm: wet }) / dry).toBeCloseTo(1, 12)
        expect(wet).toBeGreaterThanOrEqual(dry)
      }),
    )
  })

  it('is the same from the spread as from the solids', () => {
    fc.assert(
      fc.property(film, volumeSolids, thinnerShare, (dry, solids, thinner) => {
        const spread = spreadingRate({ volumeSolids: solids, dryFilm: dry })
        const wet = wetFilm({ dryFilm: dry, volumeSolids: solids, thinnerShare: thinner })
        expect(wetFilmFromSpread({ spread, thinnerShare: thinner }) / wet).toBeCloseTo(1, 12)
      }),
    )
  })

  it('covers nothing when all is lost', () => {
    expect(practicalSpread({ theoretical: 10_000, loss: 1 })).toBe(0)
  })
})
