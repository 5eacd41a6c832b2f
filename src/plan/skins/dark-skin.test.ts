import { describe, expect, it } from 'vitest'
import { absorptanceOf } from '#core/climate'
import type { Log } from '#job'
import { type Plan, plan } from '#plan'
import { sampleInput } from '../../../test/support/samples.ts'
import { workedAbsorptance } from './open-skin.ts'

const sample = { ...sampleInput('cruiser-topsides'), log: [] }

/** The cruiser, its gloss in a colour. */
function painted(colour: string, shelter: 'open' | 'shed' = 'open', log: Log = []): Plan {
  const { work } = sample
  const sheets = work.sheets.map(({ shade: _shade, ...sheet }) =>
    sheet.id === 'gloss' ? { ...sheet, colour } : sheet,
  )
  return plan({ ...sample, log, work: { ...work, sheets, place: { ...work.place, shelter } } })
}

const hoursOf = (of: Plan, sheet = 'gloss') =>
  of.conditions.zones.find((hours) => hours.sheet === sheet && hours.place === 'starboard')!
const failed = (of: Plan, limit: string) =>
  hoursOf(of).failing.filter((limits) => limits.some((one) => one.limit === limit)).length
const airOf = (of: Plan) => of.conditions.air.find(({ key }) => key === 'starboard')!

describe('a dark gloss in the sun', () => {
  const [white, black] = [painted('white'), painted('black')]

  it('is judged as hot as its own colour makes it, and its primer is not', () => {
    expect(hoursOf(white).warmestC).toBeUndefined()
    expect(hoursOf(black, 'primer').warmestC).toBeUndefined()
    const over = hoursOf(black).warmestC!.map((skinC, hour) => skinC - airOf(black).surfaceC[hour]!)
    // By night colour is nothing: equal to what the balance is solved to.
    expect(Math.min(...over)).toBeGreaterThan(-1e-4)
    // A dark side in the sun: 25 to 35 K over the air in summer and less in autumn; a light one about a third of it.
    const { airC } = airOf(black)
    const most = Math.max(...hoursOf(black).warmestC!.map((skinC, hour) => skinC - airC[hour]!))
    expect(most).toBeGreaterThan(18)
    expect(most).toBeLessThan(40)
    const share = workedAbsorptance / absorptanceOf({ colour: 'black', shade: undefined })!
    const light = Math.max(...airOf(black).surfaceC.map((skinC, hour) => skinC - airC[hour]!))
    expect(light / most).toBeGreaterThan(0.8 * share)
    expect(light / most).toBeLessThan(1.3 * share)
  })

  it('loses hours to its heat, and to nothing else', () => {
    expect(failed(black, 'hotSun')).toBeGreaterThan(failed(white, 'hotSun'))
    expect(failed(black, 'skinMost')).toBeGreaterThan(failed(white, 'skinMost'))
    for (const limit of ['dewMargin', 'humidity', 'airLeast', 'skinLeast', 'wind', 'dark'])
      expect(failed(black, limit)).toBe(failed(white, limit))
  })

  it('is shifted by what was read at the boat, as the skin in a light colour is', () => {
    const at = '2027-09-20T10:00:00Z'
    const first = airOf(black).firstMinute
    const hour = Math.floor((Date.parse(at) / 60_000 - first) / 60)
    const figure = (value: number) => ({ value, text: `${value}`, certainty: 'measured' as const })
    const air = figure(airOf(black).airC[hour]! + 4)
    const read = painted('black', 'open', [{ id: 'read', kind: 'reading', at, air }])
    const shift = airOf(read).surfaceC[hour]! - airOf(black).surfaceC[hour]!
    expect(shift).toBeCloseTo(4, 6)
    expect(hoursOf(read).warmestC![hour]! - hoursOf(black).warmestC![hour]!).toBeCloseTo(shift, 6)
  })

  it('is no different under a roof', () => {
    expect(painted('black', 'shed').conditions).toEqual(painted('white', 'shed').conditions)
  })
})
