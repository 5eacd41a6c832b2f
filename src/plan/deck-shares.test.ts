import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { answeredRaw, planInput, projectRaw } from '../../test/support/samples.ts'

const made = (kind: Parameters<typeof answeredRaw>[0]) =>
  plan(planInput(projectRaw(answeredRaw(kind)), undefined))

describe.each(['open powerboat', 'sailing yacht'] as const)('an %s from twelve answers', (kind) => {
  const { surfaces, marks, quantities, notes, days } = made(kind)

  it('has paint for every zone of its deck, marked as assumed, and the non-skid on it', () => {
    const zones = [...surfaces.zones, ...marks.zones]
    const painted = new Set(quantities.layers.map(({ zone }) => zone))
    expect([...painted].sort()).toEqual(zones.map(({ id }) => id).sort())
    const shared = notes.filter(({ code }) => code === 'surfaces.areaFromShare')
    expect(shared.map(({ data }) => data.zone)).toContain('non-skid')
    for (const { data } of shared) {
      expect(zones.find(({ id }) => id === data.zone)).toMatchObject({
        areaM2: data.areaM2,
        certainty: 'assumed',
      })
    }
    expect(days.unplaced).toEqual([])
  })

  it('takes its parts from the area inside the sheer that was worked out', () => {
    const inside = surfaces.rules.find(({ zone }) => zone === 'deck')!.workedArea
    expect(surfaces.zones.find(({ id }) => id === 'foredeck')!.areaM2).toBeCloseTo(0.2 * inside, 9)
    expect(notes.map(({ code }) => code)).not.toContain('surfaces.zoneWithoutArea')
  })
})
