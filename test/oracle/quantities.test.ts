/** Litres against cells: area, spread, parts, thinner and additive, layer by layer and product by product. */
import { describe, expect, it } from 'vitest'
import * as cell from './cells.ts'
import { drawnArea } from './deck-areas.ts'
import { sampleJobs } from './jobs.ts'
import { type Subject, subjectOf } from './plans.ts'
import { type Cells, idsIn, itemsOf, limitCell, type RawSample, sheetCell } from './raw-sample.ts'

/** The same few products and sums of doubles, in another order. */
const relative = 1e-12

function same(had: number, expected: number, what: string): void {
  const most = relative * Math.max(Math.abs(expected), Number.MIN_VALUE)
  expect(Math.abs(had - expected), `${what}: got ${had}, expected ${expected}`).toBeLessThanOrEqual(most)
}

const hullKinds = ['topsides', 'transom', 'bottom', 'boot stripe']

/** Area of a zone; those on the lofted hull are taken from the plan, which has its own published checks. */
function zoneArea(subject: Subject, id: string): number {
  const zone = itemsOf(subject.raw.work, 'zones')[id]!
  const drawn = drawnArea(subject.raw, id)
  if (drawn !== undefined) return drawn
  if (zone.area !== undefined) return cell.squareMetres(zone.area)
  if (zone.length !== undefined)
    return cell.metres(zone.length) * cell.metres(zone.width!) * Number(zone.count ?? 1)
  if (!hullKinds.includes(zone.kind!)) return panelArea(subject.raw, id)
  const { surfaces, marks } = subject.plan
  return [...marks.zones, ...surfaces.zones].find((one) => one.id === id)!.areaM2
}

/** Rectangles inside their borders, less what the rounded corners take. */
function panelArea(raw: RawSample, zone: string): number {
  const panels = Object.values(itemsOf(raw.work, 'marks')).filter((mark) => mark.zone === zone)
  return panels.reduce((sum, panel) => {
    const border = 2 * cell.metres(panel.border!)
    const corners = (4 - Math.PI) * cell.metres(panel.cornerRadius!) ** 2
    const one = (cell.metres(panel.length!) - border) * (cell.metres(panel.width!) - border) - corners
    return sum + one * Number(panel.count ?? 1)
  }, 0)
}

/** What a zone's layer lies on eats so many times the paint of a smooth surface, coat by coat. */
function textureFactor(raw: RawSample, own: Cells, zoneId: string): number {
  if (own.coverage !== undefined) return 1
  const grit = Number(limitCell('textureGrit'))
  const layers = Object.values(itemsOf(raw.work, 'layers')).filter((layer) =>
    idsIn(layer.zones).includes(zoneId),
  )
  const below = layers.slice(0, layers.indexOf(own))
  const hasBead = (layer: Cells) => layer.additive !== undefined
  const roleOf = (layer: Cells) => sheetCell(raw, layer.sheet!, 'role')
  const zone = itemsOf(raw.work, 'zones')[zoneId]!
  const ground = Object.values(itemsOf(raw.work, 'findings')).some(
    ({ zone: at, kind }) => at === zoneId && /non-skid$/.test(kind!),
  )
  const faired = below.some(
    (layer) =>
      /^(filler|fairing)$/.test(roleOf(layer) ?? '') && cell.share(layer.coverShare ?? '100 %') >= 0.5,
  )
  const drawn = Object.values(itemsOf(raw.work, 'marks')).some((mark) => mark.zone === zoneId)
  let under = 1
  if (below.some((layer) => hasBead(layer) || roleOf(layer) === 'non-skid')) under = grit
  else if (!drawn && !ground && !faired && zone.texture === 'bonded grit') under = grit
  else if (!drawn && !ground && !faired && zone.texture === 'moulded non-skid')
    under = Number(limitCell('textureMoulded'))
  let all = 0
  for (let coat = 1; coat <= Number(own.coats); coat++)
    all += coat > 1 && hasBead(own) ? Math.max(under, grit) : under
  return all / Number(own.coats)
}

/** Square metres a cubic metre of mixed paint covers in one coat of a smooth surface. */
function spread(raw: RawSample, layer: Cells): number {
  const printed = layer.coverage ?? (layer.dryFilm ? undefined : sheetCell(raw, layer.sheet!, 'coverage'))
  if (printed !== undefined) return cell.coverage(printed)
  const solids = cell.share(sheetCell(raw, layer.sheet!, 'volumeSolids')!)
  const film = cell.metres(layer.dryFilm ?? sheetCell(raw, layer.sheet!, 'dryFilm')!)
  const usual = limitCell(
    { 'filler knife': 'lossKnife' as const, brush: 'lossBrush' as const }[String(layer.method)] ??
      'lossRoller',
  )
  return (solids / film) * (1 - cell.share(layer.lossShare ?? usual))
}

const thinnerShare = (raw: RawSample, layer: Cells): number =>
  cell.share(layer.thinnerShare ?? sheetCell(raw, layer.sheet!, 'thinnerShare') ?? '0 %')

const additiveShare = (layer: Cells): number =>
  layer.additive === undefined ? 0 : cell.volumeShare(layer.additive)

type Litres = { readonly mixed: number; readonly thinner: number; readonly additive: number }

function litresOf(subject: Subject, layer: Cells, zone: string): Litres & { readonly area: number } {
  const area = zoneArea(subject, zone) * cell.share(layer.coverShare ?? '100 %')
  const mixed =
    ((area * Number(layer.coats)) / spread(subject.raw, layer)) * textureFactor(subject.raw, layer, zone)
  return {
    area,
    mixed,
    thinner: mixed * thinnerShare(subject.raw, layer),
    additive: mixed * additiveShare(layer),
  }
}

const layersOf = (raw: RawSample) =>
  Object.entries(itemsOf(raw.work, 'layers')).flatMap(([id, layer]) =>
    idsIn(layer.zones).map((zone) => ({ id, layer, zone })),
  )

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0)

describe.each(sampleJobs)('the litres of %s', (name) => {
  const subject = subjectOf(name)
  const { raw, plan } = subject

  it('are area by coats over spread for every layer on every zone', () => {
    const { layers } = plan.quantities
    expect(layers.length).toBe(layersOf(raw).length)
    for (const { id, layer, zone } of layersOf(raw)) {
      const had = layers.find((one) => one.layer === id && one.zone === zone)!
      const own = litresOf(subject, layer, zone)
      same(had.areaM2, own.area, `${zone} ${id} area`)
      same(had.mixedM3, own.mixed, `${zone} ${id} mixed`)
      same(had.mixedPerCoatM3, own.mixed / Number(layer.coats), `${zone} ${id} a coat`)
      same(had.thinnerM3, own.thinner, `${zone} ${id} thinner`)
      same(had.additiveM3, own.additive, `${zone} ${id} additive`)
    }
  })

  it('are summed by product with what the repairs take, and split into its parts', () => {
    const wanted = new Set([
      ...layersOf(raw).map(({ layer }) => layer.sheet!),
      ...Object.values(itemsOf(raw.work, 'findings')).flatMap(({ sheet }) => (sheet ? [sheet] : [])),
    ])
    expect(new Set(plan.quantities.sheets.map((one) => one.sheet))).toEqual(wanted)
    for (const had of plan.quantities.sheets) {
      const own = layersOf(raw)
        .filter(({ layer }) => layer.sheet === had.sheet)
        .map(({ layer, zone }) => litresOf(subject, layer, zone))
      const repairs = sum(repairVolumes(raw, had.sheet))
      const mixed = sum(own.map((one) => one.mixed)) + repairs
      same(had.repairsM3, repairs, `${had.sheet} repairs`)
      same(had.mixedM3, mixed, `${had.sheet} mixed`)
      same(had.thinnerM3, sum(own.map((one) => one.thinner)), `${had.sheet} thinner`)
      same(had.additiveM3, sum(own.map((one) => one.additive)), `${had.sheet} additive`)
      const parts = cell.ratio(sheetCell(raw, had.sheet, 'mix')!)
      expect(had.partsM3.length).toBe(parts.length)
      parts.forEach((part, index) => {
        same(had.partsM3[index]!, (mixed * part) / sum(parts), `${had.sheet} part ${index}`)
      })
    }
  })
})

const repairVolumes = (raw: RawSample, sheet: string): readonly number[] =>
  Object.values(itemsOf(raw.work, 'findings')).flatMap((finding) =>
    finding.sheet === sheet && finding.volume ? [cell.cubicMetres(finding.volume)] : [],
  )
