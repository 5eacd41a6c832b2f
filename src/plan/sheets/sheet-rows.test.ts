/** What a sheet asks, from its rows to the calendar: windows with a hole, thinner by grade, parts by weight. */
import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, sampleWeather, withCell } from '../../../test/support/samples.ts'

const raw = sampleRaw('open-powerboat')
const weather = sampleWeather('open-powerboat')
const first = plan(planInput(projectRaw(raw), weather))
const gloss = first.buildUps.layers.find(({ role, coats }) => role === 'finish' && coats > 1)!

type Cells = Readonly<Record<string, string>>
type Rows = Readonly<Record<string, Readonly<Record<string, Cells>>>>

/** The plan with rows added to sections, and cells of the gloss changed. */
function planWith(rows: Rows, sheet: Cells = {}) {
  const withRows = Object.entries(rows).flatMap(([section, items]) =>
    Object.entries(items).flatMap(([id, cells]) =>
      Object.entries({ sheet: gloss.sheet, ...cells }).map(
        ([key, text]) => [[section, id, key], text] as const,
      ),
    ),
  )
  const withSheet = Object.entries(sheet).map(([key, text]) => [['sheets', gloss.sheet, key], text] as const)
  const document = [...withRows, ...withSheet].reduce(
    (made, [path, text]) => withCell(made, 'work', path, text),
    raw,
  )
  const projected = projectRaw(document)
  return { plan: plan(planInput(projected, weather)), problems: projected.problems }
}
const told = (of: typeof first, code: string) => of.notes.filter((note) => note.code === code)

describe('recoat windows as rows', () => {
  it('keep the next coat out of the hole', () => {
    const windows = {
      wet: { at: '23 °C', from: '0 h', until: '30 min' },
      dry: { at: '23 °C', from: '6 d' },
    }
    const { plan: made } = planWith({ windows }, {})
    const layer = made.buildUps.layers.find(({ id }) => id === gloss.id)!
    const coats = made.steps.steps
      .filter((step) => step.zone === layer.zone && step.layer === layer.layer && step.kind === 'coat')
      .map((step) => made.days.placed.find((one) => one.step === step.id))
    expect(coats.length).toBeGreaterThan(1)
    const [one, two] = coats
    // By the clock of the sheet: six days at 23 °C, longer in a colder yard.
    if (one && two) expect(two.startMinute - one.endMinute).toBeGreaterThan(6 * 24 * 60)
    else expect(made.days.unplaced.length).toBeGreaterThan(0)
  })

  it('are told where they cannot be meant, and the sheet’s own waits count', () => {
    const { plan: made } = planWith({
      windows: { a: { from: '1 h', until: '8 h' }, b: { from: '4 h', until: '24 h' } },
    })
    expect(told(made, 'buildup.windowsOverlap')).toHaveLength(1)
    const before = first.buildUps.sheets.find(({ id }) => id === gloss.sheet)!
    const after = made.buildUps.sheets.find(({ id }) => id === gloss.sheet)!
    expect(after.clocks.recoatLeast).toEqual(before.clocks.recoatLeast)
  })

  it('are told where a warmer row is later', () => {
    const { plan: made } = planWith({
      windows: { a: { at: '10 °C', from: '8 h' }, b: { at: '20 °C', from: '12 h' } },
    })
    expect(told(made, 'buildup.windowsOdd')[0]?.data).toMatchObject({ airC: 20, colderC: 10 })
  })

  it('that shut before they open are refused where they are written', () => {
    const { problems } = planWith({ windows: { a: { from: '8 h', until: '4 h' } } })
    expect(problems.map(({ code }) => code)).toContain('job.windowEnds')
  })
})

describe('a sheet that contradicts itself', () => {
  it('is told where its longest wait is over before its shortest', () => {
    const { plan: made } = planWith({}, { recoatLeast: '10C: 24h, 20C: 12h', recoatMost: '20C: 8h' })
    expect(told(made, 'buildup.sheetNeverOpen')[0]?.data).toMatchObject({ sheet: gloss.sheet, airC: 10 })
  })

  it('is refused where it holds more than it can, or mixes nothing', () => {
    expect(planWith({}, { volumeSolids: '120 %' }).problems.map(({ severity }) => severity)).toContain(
      'error',
    )
    expect(planWith({}, { mix: '0:1' }).problems.map(({ severity }) => severity)).toContain('error')
  })

  it('is told where its parts by weight are not its parts by volume', () => {
    // 2:1 by volume at 1.2 and 1.0 kg/L weighs 2.4 : 1.0.
    const weighed = { mix: '2:1', densityA: '1.2 kg/L', densityB: '1.0 kg/L' }
    expect(told(planWith({}, { ...weighed, mixByWeight: '2.4:1' }).plan, 'buildup.ratiosDisagree')).toEqual(
      [],
    )
    expect(
      told(planWith({}, { ...weighed, mixByWeight: '2:1' }).plan, 'buildup.ratiosDisagree'),
    ).toHaveLength(1)
  })
})

describe('coverage on a label without a film', () => {
  const layerWith = (cells: Cells) => {
    const { buildUps } = planWith(
      {},
      { dryFilm: '', volumeSolids: '50 %', thinnerShare: '10 %', ...cells },
    ).plan
    return buildUps.layers.find(({ id }) => id === gloss.id)!
  }

  it('gives the film that so many litres leave, wet and dry', () => {
    const layer = layerWith({ coverage: '8 m²/L' })
    // 1 L over 8 m² is 125 µm wet unthinned; half of it is solids; a tenth of thinner goes on top.
    expect(layer.dryFilmM!.value * 1e6).toBeCloseTo(62.5, 9)
    expect(layer.wetFilmM!.value * 1e6).toBeCloseTo(137.5, 9)
  })

  it('gives way to a film that is on the label', () => {
    expect(layerWith({ coverage: '8 m²/L', dryFilm: '40 µm' }).dryFilmM!.value * 1e6).toBeCloseTo(40, 9)
  })
})

describe('a spread measured on the job', () => {
  it('gives the film of what did not stay in the tray', () => {
    const own = planWith(
      { layers: { [gloss.layer]: { coverage: '10 m²/L', lossShare: '20 %', dryFilm: '' } } },
      {
        volumeSolids: '50 %',
      },
    ).plan.buildUps.layers.find(({ id }) => id === gloss.id)!
    // 100 ml a square metre, a fifth of it lost, half of the rest solids.
    expect(own.dryFilmM!.value * 1e6).toBeCloseTo(40, 9)
  })
})

describe('parts by weight', () => {
  it('give parts by volume over the densities', () => {
    const { plan: made } = planWith(
      {},
      { mix: '', mixByWeight: '100:45', densityA: '1.35 kg/L', densityB: '1 kg/L' },
    )
    const { mix } = made.buildUps.sheets.find(({ id }) => id === gloss.sheet)!
    expect(mix.value[1]! / mix.value[0]!).toBeCloseTo((0.45 * 1.35) / 1, 12)
  })

  it('say what they lack without densities', () => {
    const { plan: made } = planWith({}, { mix: '', mixByWeight: '100:45', densityA: '', densityB: '' })
    expect(told(made, 'buildup.ratioByWeightAlone')).toHaveLength(1)
  })
})

describe('a product that does not keep', () => {
  it('is told where it would be bought too soon for its last coat', () => {
    const short = told(planWith({}, { shelfLife: '1 week' }).plan, 'stores.boughtTooSoon')
    expect(short[0]?.data).toMatchObject({ sheet: gloss.sheet, keepsDays: 7 })
    expect(Number(short[0]?.data.days)).toBeGreaterThan(7)
    expect(told(planWith({}, { shelfLife: '2 years' }).plan, 'stores.boughtTooSoon')).toEqual([])
  })

  it('is opened in more goes by its own life once opened', () => {
    const { plan: made } = planWith({}, { openedLife: '1 day' })
    expect(told(made, 'stores.openedAgain').map(({ data }) => data.sheet)).toContain(gloss.sheet)
    expect(told(first, 'stores.openedAgain').map(({ data }) => data.sheet)).not.toContain(gloss.sheet)
  })
})

describe('thinner by grade', () => {
  const thinners = {
    fast: { name: 'fast', method: 'any', airUntil: '15 °C', least: '5 %', most: '10 %' },
    slow: { name: 'slow', method: 'any', airFrom: '15 °C', airUntil: '30 °C', least: '10 %', most: '20 %' },
  }
  const layerShare = (share: string) =>
    plan(
      planInput(
        projectRaw(
          withCell(
            Object.entries(thinners).reduce(
              (document, [id, cells]) =>
                Object.entries({ sheet: gloss.sheet, ...cells }).reduce(
                  (made, [key, text]) => withCell(made, 'work', ['thinners', id, key], text),
                  document,
                ),
              raw,
            ),
            'work',
            ['layers', gloss.layer, 'thinnerShare'],
            share,
          ),
        ),
        weather,
      ),
    )

  it('is that of the air and method, and stands in where the layer says no share', () => {
    const { plan: made } = planWith({ thinners })
    const layer = made.buildUps.layers.find(({ id }) => id === gloss.id)!
    expect(layer.thinnerShare.value).toBeCloseTo(0.15, 12)
  })

  it('is told past its most and under its least', () => {
    expect(told(layerShare('25 %'), 'buildup.thinnerOver')[0]?.data).toMatchObject({
      grade: 'slow',
      mostShare: 0.2,
    })
    expect(told(layerShare('5 %'), 'buildup.thinnerUnder')[0]?.data).toMatchObject({ leastShare: 0.1 })
    expect(told(layerShare('15 %'), 'buildup.thinnerOver')).toEqual([])
  })

  it('is told where none is for the air', () => {
    const { plan: made } = planWith({ thinners: { fast: thinners.fast } }, { thinnerShare: '10 %' })
    expect(told(made, 'buildup.thinnerNone').length).toBeGreaterThan(0)
  })
})
