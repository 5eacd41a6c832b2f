import { describe, expect, it } from 'vitest'
import { newJob } from '#job'
import { plan } from '#plan'
import { planInput, projectRaw } from '../../test/support/samples.ts'

const made = (kind: 'open powerboat' | 'sailing yacht') =>
  plan(
    planInput(
      projectRaw(
        newJob({
          name: 'Test',
          kind,
          length: '9 m',
          beam: '3 m',
          freeboard: '1.2 m',
          start: '2027-05-03',
          shelter: 'shed',
          timeZone: 'Europe/Paris',
          paint: 'one-part',
          deck: true,
        }),
      ),
      undefined,
    ),
  )

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
