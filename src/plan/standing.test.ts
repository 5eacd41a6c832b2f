import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../test/support/samples.ts'

const raw = sampleRaw('open-powerboat')
const planOf = (document: typeof raw) => plan(planInput(projectRaw(document), undefined))
const made = planOf(raw)
const fit = made.standing.fit!
const codes = (of: typeof made) => of.standing.notes.map(({ code }) => code)

describe('how a boat stands', () => {
  it('is worked from the heights of marks, and agrees to what a tape reads', () => {
    // The marks of the sample were turned by 1.2° and −0.6° at 0.862 m, and 1 or 2 mm added to each.
    expect((fit.trimRad * 180) / Math.PI).toBeCloseTo(1.2, 1)
    expect((fit.heelRad * 180) / Math.PI).toBeCloseTo(-0.6, 0)
    expect(fit.heightM).toBeCloseTo(0.862, 2)
    expect(fit.rmsM).toBeLessThan(0.003)
    expect(fit.over).toBe('floor')
    expect(fit.certainty).toBe('assumed')
    expect(codes(made)).toEqual(['boat.standsSink', 'boat.waterlineFromTraces'])
  })

  it('gives every edge of the stripe its height over the floor, port and starboard apart', () => {
    const [stripe] = made.marks.stripes
    const [over] = fit.stripes
    expect(over?.rows).toHaveLength(stripe!.table.rows.length)
    const [row, first] = [stripe!.table.rows[0]!, over!.rows[0]!]
    // She leans to port, so the same line is lower over the floor on that side, by its breadth times the sine.
    const apart = 2 * row.lowerHalfBreadthM * Math.sin(-fit.heelRad) * Math.cos(fit.trimRad)
    expect(first.starboardLowerM - first.portLowerM).toBeCloseTo(apart, 12)
    expect(row.lowerHalfBreadthM).toBeGreaterThan(0.8)
  })

  it('may be measured down from a laser plane', () => {
    const ids = Object.keys(raw.work.levels ?? {})
    const cells = (id: string) => raw.work.levels?.[id] as Readonly<Record<string, string>>
    const lasered = ids.reduce((document, id) => {
      const over = Number.parseFloat(cells(id).overFloor!)
      const below = withCell(document, 'work', ['levels', id, 'belowLaser'], `${(1.4 - over).toFixed(3)} m`)
      return withCell(below, 'work', ['levels', id, 'overFloor'], '')
    }, raw)
    const against = planOf(lasered)
    expect(against.standing.fit).toMatchObject({ over: 'laser' })
    expect(codes(against)).toContain('boat.laserHeightMissing')
    const floored = planOf(withCell(lasered, 'work', ['stance', 'laserHeight'], '1.4 m'))
    expect(floored.standing.fit?.over).toBe('floor')
    expect(floored.standing.fit?.heightM).toBeCloseTo(fit.heightM, 9)
  })

  it('names the mark that disagrees', () => {
    const wrong = planOf(withCell(raw, 'work', ['levels', 'port-side', 'overFloor'], '1.04 m'))
    const note = wrong.standing.notes.find(({ code }) => code === 'boat.levelDisagrees')
    expect(note?.data).toMatchObject({ mark: 'port-side', name: 'Scum line, port side' })
  })

  it('is not known without marks, nor from two', () => {
    const { levels: _levels, ...work } = raw.work
    const without = { ...raw, work } as typeof raw
    expect(planOf(without).standing).toEqual({ notes: [] })
    const two = {
      ...raw,
      work: { ...raw.work, levels: Object.fromEntries(Object.entries(raw.work.levels!).slice(0, 2)) },
    }
    expect(planOf(two as typeof raw).standing).toMatchObject({ notes: [{ code: 'boat.levelsTooFew' }] })
  })
})
