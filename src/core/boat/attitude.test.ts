import { describe, expect, it } from 'vitest'
import { normal } from '../../../test/support/normal.ts'
import { type Attitude, attitudeFrom, heightOverLevel, type LevelMark, tapeSigma } from './attitude.ts'

const degree = Math.PI / 180
const truth: Attitude = { trim: 2 * degree, heel: 1.5 * degree, height: 0.9 }

/** Bow on the centreline at the sheer, waterline port and starboard aft, chine amidships on both sides. */
const places = [
  { id: 'bow', x: 7.4, y: 0, z: 1.1 },
  { id: 'port quarter', x: 0.1, y: 1.2, z: 0 },
  { id: 'starboard quarter', x: 0.1, y: -1.2, z: 0 },
  { id: 'port chine', x: 3.8, y: 1.15, z: 0.12 },
  { id: 'starboard chine', x: 3.8, y: -1.15, z: 0.12 },
]

/** The rotation as a matrix product, written down apart from the code: heel about x, then trim about y. */
function turned({ x, y, z }: { x: number; y: number; z: number }, { trim, heel, height }: Attitude): number {
  const heeled = { x, y: y * Math.cos(heel) - z * Math.sin(heel), z: y * Math.sin(heel) + z * Math.cos(heel) }
  return height + heeled.x * Math.sin(trim) + heeled.z * Math.cos(trim)
}

const measured = (of: Attitude = truth, error: (k: number) => number = () => 0): readonly LevelMark[] =>
  places.map((place, k) => ({ ...place, height: turned(place, of) + error(k) }))

const fitOf = (marks: readonly LevelMark[]) => {
  const result = attitudeFrom(marks)
  if (!result.ok) throw new Error('no attitude')
  return result
}

describe('attitudeFrom', () => {
  it('recovers 2° trim, 1.5° heel and 0.9 m from five exact marks to 0.1 mm over the whole boat', () => {
    // Closed form: the marks were turned by a rotation written down in this file.
    const { fit, notes } = fitOf(measured())
    const corners = [0, 7.5].flatMap((x) => [-1.3, 1.3].flatMap((y) => [-0.4, 1.2].map((z) => ({ x, y, z }))))
    for (const corner of corners)
      expect(Math.abs(heightOverLevel(fit.attitude, corner) - turned(corner, truth))).toBeLessThan(1e-4)
    expect(fit.attitude.trim).toBeCloseTo(truth.trim, 12)
    expect(fit.attitude.heel).toBeCloseTo(truth.heel, 12)
    expect(fit.attitude.height).toBeCloseTo(truth.height, 12)
    expect(fit.rms).toBeLessThan(1e-12)
    expect(notes).toEqual([])
  })

  it('recovers steep and contrary attitudes as well', () => {
    for (const trim of [-25, -3, 0, 8, 25])
      for (const heel of [-20, 0, 20]) {
        const of = { trim: trim * degree, heel: heel * degree, height: -0.4 }
        const { attitude } = fitOf(measured(of)).fit
        expect(attitude.trim).toBeCloseTo(of.trim, 10)
        expect(attitude.heel).toBeCloseTo(of.heel, 10)
        expect(attitude.height).toBeCloseTo(of.height, 10)
      }
  })

  it('says with 3 mm of noise that the marks agree to about 3 mm, and blames nobody', () => {
    const random = normal(20270412)
    const rounds = Array.from({ length: 400 }, () => {
      const { fit, notes } = fitOf(measured(truth, () => 0.003 * random()))
      return { squares: fit.rms ** 2 * places.length, blamed: notes.length }
    })
    // The sum of squares over n − 3 degrees of freedom is the variance of the noise.
    const variance =
      rounds.reduce((sum, { squares }) => sum + squares, 0) / rounds.length / (places.length - 3)
    expect(Math.sqrt(variance)).toBeGreaterThan(0.0027)
    expect(Math.sqrt(variance)).toBeLessThan(0.0033)
    expect(rounds.filter(({ blamed }) => blamed > 0).length).toBeLessThan(8)
  })

  it('has normalised residuals of variance one for noise of the tape itself', () => {
    const random = normal(7)
    const all = Array.from({ length: 400 }, () =>
      fitOf(measured(truth, () => tapeSigma * random())).fit.marks.map(({ normalised }) => normalised!),
    ).flat()
    const variance = all.reduce((sum, w) => sum + w * w, 0) / all.length
    expect(variance).toBeGreaterThan(0.9)
    expect(variance).toBeLessThan(1.1)
  })

  it('names the mark that was read 40 mm wrong among six', () => {
    const keel = { id: 'keel', x: 2, y: 0.3, z: -0.3 }
    const six = [...measured(), { ...keel, height: turned(keel, truth) }]
    for (let k = 0; k < six.length; k++) {
      const slipped = six.map((mark, at) => (at === k ? { ...mark, height: mark.height + 0.04 } : mark))
      const [note] = fitOf(slipped).notes
      expect(note).toMatchObject({ code: 'boat.levelDisagrees', data: { mark: six[k]!.id } })
    }
  })

  it('sees that four disagree without saying which, and says that three cannot be checked', () => {
    const four = measured().slice(0, 4)
    const slipped = four.map((mark, k) => (k === 1 ? { ...mark, height: mark.height + 0.06 } : mark))
    expect(fitOf(slipped).notes[0]).toMatchObject({ code: 'boat.levelsDisagree' })
    expect(fitOf(four.slice(0, 3)).notes[0]).toMatchObject({ code: 'boat.levelsUnchecked' })
  })

  it('gives no attitude from two marks, nor from marks on one line', () => {
    expect(attitudeFrom(measured().slice(0, 2))).toMatchObject({
      ok: false,
      notes: [{ code: 'boat.levelsTooFew' }],
    })
    const inLine = [0, 3, 6].map((x) => ({ id: `${x}`, x, y: 0.4, z: 0, height: 0.5 + 0.01 * x }))
    expect(attitudeFrom(inLine)).toMatchObject({ ok: false, notes: [{ code: 'boat.levelsInLine' }] })
  })

  it('gives none from heights that no boat can stand at', () => {
    const mad = measured().map((mark, k) => ({ ...mark, height: k * 1e4 }))
    expect(attitudeFrom(mad)).toMatchObject({ ok: false, notes: [{ code: 'boat.levelsNoFit' }] })
    const broken = measured().map((mark) => ({ ...mark, height: Number.NaN }))
    expect(attitudeFrom(broken).ok).toBe(false)
  })
})
