/** The build-ups: each zone's layers from the boat outward, with film, spread and litres. */
import { noteText } from '#papers'
import { type Plan, sandingRows, type ZoneLayer } from '#plan'
import type { Words } from '#words'
import { allZones } from './boat-view.ts'
import { section, table, wrap } from './table.ts'

export function buildUpLines(plan: Plan, words: Words): readonly string[] {
  const zones = allZones(plan).filter((zone) => plan.buildUps.layers.some((layer) => layer.zone === zone.id))
  const head = ['layer', 'coats', 'dryFilm', 'wetFilm', 'spread', 'needed'].map((key) =>
    words.label(`column.${key}`),
  )
  const rows = zones.flatMap((zone) => [
    [`${zone.name}, ${words.figure('areaM2', zone.areaM2)}`],
    ...plan.buildUps.layers
      .filter((layer) => layer.zone === zone.id)
      .map((layer) => layerRow(plan, layer, words)),
  ])
  return rows.length === 0
    ? []
    : section(
        words.label('heading.buildUp'),
        table([head, ...rows], ['left', 'right', 'right', 'right', 'right', 'right']),
      )
}

/** Each grit below each layer, over all its zones. */
export function sandingLines(plan: Plan, words: Words): readonly string[] {
  const rows = sandingRows(plan.buildUps.layers)
  if (rows.length === 0) return []
  const head = ['sanding.before', 'sanding.grit', 'column.area', 'sanding.hours', 'sanding.discs']
  return section(
    words.label('sanding.title'),
    table(
      [
        head.map((key) => words.label(key)),
        ...rows.map(({ name, when, grit, areaM2, hours, discs }) => [
          words.sentence('sanding.at', { name, when }),
          grit,
          words.figure('areaM2', areaM2),
          words.figure('workHours', hours.value),
          String(Math.ceil(discs)),
        ]),
      ],
      ['left', 'left', 'right', 'right', 'right'],
    ),
  )
}

/** What does not hold, and what wants minding; every note once. */
export function bondLines(plan: Plan, words: Words): readonly string[] {
  const lines = plan.bonds.notes.flatMap((note) =>
    wrap(`${words.label(`severity.${note.severity}`)}: ${noteText(plan, note, words)}`, '  '),
  )
  return section(
    words.label('buildUp.bonds'),
    lines.length === 0 ? [`  ${words.label('buildUp.holds')}`] : lines,
  )
}

function layerRow(plan: Plan, layer: ZoneLayer, words: Words): readonly string[] {
  const quantity = plan.quantities.layers.find((one) => one.id === layer.id)
  return [
    `  ${layer.name}`,
    String(layer.coats),
    layer.dryFilmM ? words.figure('dryFilmM', layer.dryFilmM.value) : '',
    layer.wetFilmM ? words.figure('wetFilmM', layer.wetFilmM.value) : '',
    layer.spreadM2PerM3 ? words.figure('spreadM2PerM3', layer.spreadM2PerM3.value) : '',
    quantity ? words.figure('volumeM3', quantity.mixedM3) : '',
  ]
}

export const buildUpJson = (plan: Plan) => ({
  layers: plan.buildUps.layers.map((layer) => {
    const quantity = plan.quantities.layers.find((one) => one.id === layer.id)
    return {
      zone: layer.zone,
      layer: layer.layer,
      sheet: layer.sheet,
      name: layer.name,
      role: layer.role,
      method: layer.method,
      coats: layer.coats,
      areaM2: layer.areaM2,
      ...(layer.dryFilmM ? { dryFilmUm: layer.dryFilmM.value * 1e6 } : {}),
      ...(layer.wetFilmM ? { wetFilmUm: layer.wetFilmM.value * 1e6 } : {}),
      thinnerShare: layer.thinnerShare.value,
      lossShare: layer.lossShare.value,
      ...(layer.spreadM2PerM3 ? { spreadM2PerL: layer.spreadM2PerM3.value / 1000 } : {}),
      spreadFrom: layer.spreadFrom,
      ...(layer.spreadBand
        ? { spreadLeastM2PerL: layer.spreadBand[0] / 1000, spreadMostM2PerL: layer.spreadBand[1] / 1000 }
        : {}),
      ...(layer.ladder.length > 0 ? { sanding: layer.ladder.map(rungJson) } : {}),
      ...(layer.between ? { sandingBetween: rungJson(layer.between) } : {}),
      textureFactor: layer.texture.value,
      ...(layer.filmLeftM ? { filmLeftUm: layer.filmLeftM.value * 1e6 } : {}),
      ...(layer.vocKgPerM3 ? { vocKgPerM3: layer.vocKgPerM3.value } : {}),
      ...(quantity
        ? {
            mixedL: quantity.mixedM3 * 1000,
            thinnerL: quantity.thinnerM3 * 1000,
            additiveL: quantity.additiveM3 * 1000,
            ...(quantity.broadcastKg > 0 ? { broadcastKg: quantity.broadcastKg } : {}),
            certainty: quantity.certainty,
          }
        : {}),
    }
  }),
  stacks: plan.bonds.stacks.map(({ zones, existing, joints, pinholesAfter }) => ({
    zones,
    existing,
    ...(pinholesAfter === undefined ? {} : { pinholesAfter }),
    joints: joints.map(jointJson),
  })),
  products: plan.quantities.sheets.map((one) => ({
    sheet: one.sheet,
    mixedL: one.mixedM3 * 1000,
    partsL: one.partsM3.map((part) => part * 1000),
    thinnerL: one.thinnerM3 * 1000,
    additiveL: one.additiveM3 * 1000,
    repairsL: one.repairsM3 * 1000,
    certainty: one.certainty,
  })),
})

const rungJson = ({ grit, areaM2, hoursPerM2, disc }: ZoneLayer['ladder'][number]) => ({
  grit,
  areaM2,
  hours: hoursPerM2.value * areaM2,
  discs: disc.perM2 * areaM2,
})

type Joint = Plan['bonds']['stacks'][number]['joints'][number]
type Bond = Joint['bond']

const jointJson = ({ layer, under, kind, material, bond, branches, acts }: Joint) => ({
  layer,
  under,
  kind,
  on: material,
  ...bondJson(bond),
  ...(branches.length === 0
    ? {}
    : { branches: branches.map((branch) => ({ on: branch.material, ...bondJson(branch.bond) })) }),
  acts,
})

const bondJson = ({ verdict, disputed, says, preparation, wait }: Bond) => ({
  verdict,
  disputed,
  says: says.map(({ grit, ...said }) => ({ ...said, ...(grit ? gritJson(grit) : {}) })),
  key: preparation.key,
  ...(preparation.grit ? gritJson(preparation.grit) : {}),
  tie: preparation.tie.map(({ family, role }) => (role === undefined ? family : `${family} ${role}`)),
  clear: preparation.clear,
  only: preparation.only,
  ...(wait ? { waitHours: wait.hours, until: wait.until } : {}),
})

type Grits = NonNullable<Bond['preparation']['grit']>
const gritJson = ({ coarsest, finest }: Grits) => ({ coarsest: coarsest.name, finest: finest.name })
