/** An old one-part film under stronger paint: by the trade's identification it gums under the rag, and one failed test means strip. */
import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { plan, suggestBuildUps } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../../test/support/samples.ts'

const suggestedOver = (rub?: string) => {
  const zones = ['topsides-port', 'topsides-starboard', 'transom']
  const old = zones.reduce(
    (made, zone) => withCell(made, 'work', ['zones', zone, 'existing'], 'one-part'),
    sampleRaw('open-powerboat'),
  )
  const raw = rub
    ? zones.reduce((made, zone) => withCell(made, 'work', ['zones', zone, 'solventRub'], rub), old)
    : old
  const projected = projectRaw(raw)
  const made = plan(planInput(projected, undefined))
  const found = suggestBuildUps({
    plan: made,
    work: projected.work,
    prices: projected.money?.prices,
    catalogue,
    wish: { family: 'two-part polyurethane' },
  })
  return found.groups.filter((group) => group.zones.some((zone) => zones.includes(zone)))
}

describe('two-part paint over an old one-part', () => {
  it('is suggested over an epoxy with a test patch, which is said', () => {
    const groups = suggestedOver()
    expect(groups.length).toBeGreaterThan(0)
    for (const { suggestions } of groups)
      for (const one of suggestions)
        expect(one.strip !== undefined || one.only.some(({ data }) => data.bondOnly === 'test patch')).toBe(
          true,
        )
  })

  it('is never suggested where the rag took the film up, unless it is stripped', () => {
    for (const { suggestions } of suggestedOver('softens')) {
      expect(suggestions.length).toBeGreaterThan(0)
      for (const one of suggestions) expect(one.strip).toBeDefined()
    }
  })
})
