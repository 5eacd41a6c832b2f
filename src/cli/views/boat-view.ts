/** The boat: particulars, zones with their areas, and what the rules of thumb say. */
import { standingText } from '#papers'
import type { Plan, ZoneArea } from '#plan'
import type { Words } from '#words'
import { section, table } from './table.ts'

export const allZones = (plan: Plan): readonly ZoneArea[] => [...plan.surfaces.zones, ...plan.marks.zones]

export function boatLines(plan: Plan, words: Words): readonly string[] {
  return [
    ...section(words.label('heading.particulars'), particularLines(plan, words)),
    ...section(words.label('heading.zones'), zoneLines(plan, words)),
    ...section(words.label('heading.pads'), padLines(plan, words)),
    ...section(words.label('heading.rules'), ruleLines(plan, words)),
    ...section(words.label('heading.standing'), standingLines(plan, words)),
  ]
}

function standingLines({ standing: { fit } }: Plan, words: Words): readonly string[] {
  if (!fit) return []
  return [
    standingText(fit, words),
    ...table(
      fit.marks.map(({ mark, residualM }) => [mark, words.figure('residualByTapeM', residualM)]),
      ['left', 'right'],
    ),
  ]
}

function particularLines(plan: Plan, words: Words): readonly string[] {
  const found = plan.surfaces.hull?.particulars
  if (!found) return []
  const rows: readonly (readonly [string, number])[] = [
    ['lengthOverallM', found.lengthOverall],
    ['lengthWaterlineM', found.lengthWaterline],
    ['beamM', found.beamOverall],
    ['draftM', found.draft],
    ['freeboardStemM', found.freeboardStem],
    ['freeboardMidM', found.freeboardMid],
    ['freeboardSternM', found.freeboardStern],
  ]
  return table(
    rows.map(([key, value]) => [words.label(`particular.${key}`), words.figure(key, value)]),
    ['left', 'right'],
  )
}

export function zoneLines(plan: Plan, words: Words): readonly string[] {
  const rows = allZones(plan).map((zone) => [
    zone.name,
    words.figure('areaM2', zone.areaM2),
    words.figure('perimeterM', zone.perimeterM),
    words.label(`certainty.${zone.certainty}`),
    words.label(`how.${zone.how}`),
  ])
  const head = ['zone', 'area', 'edge', 'sure', 'from'].map((key) => words.label(`column.${key}`))
  return rows.length === 0 ? [] : table([head, ...rows], ['left', 'right', 'right', 'left', 'left'])
}

/** What stands hide of the hull, and is painted later. */
function padLines({ surfaces: { pads } }: Plan, words: Words): readonly string[] {
  return table(
    pads.map(({ name, count, hides, areaM2, certainty }) => [
      count === 1 ? name : `${count} × ${name}`,
      words.figure('areaM2', areaM2),
      words.label(`certainty.${certainty}`),
      words.label(`hides.${hides}`),
    ]),
    ['left', 'right', 'left', 'left'],
  )
}

function ruleLines(plan: Plan, words: Words): readonly string[] {
  return table(
    plan.surfaces.rules.map((rule) => [
      words.label(`rule.${rule.id}`),
      words.figure('areaM2', rule.area),
      words.figure('areaM2', rule.workedArea),
      words.figure('differenceShare', rule.differenceShare),
    ]),
    ['left', 'right', 'right', 'right'],
  )
}

const standingJson = ({ standing: { fit } }: Plan) => {
  if (!fit) return {}
  const { certainty, stripes: _stripes, ...found } = fit
  return { standing: { ...found, confidence: certainty } }
}

export const boatJson = (plan: Plan) => ({
  particulars: particularsJson(plan),
  ...standingJson(plan),
  zones: allZones(plan).map(({ id, name, kind, side, areaM2, perimeterM, certainty, how }) => ({
    id,
    name,
    kind,
    side,
    areaM2,
    perimeterM,
    confidence: certainty,
    how,
  })),
  pads: plan.surfaces.pads.map(({ id, name, hides, side, count, areaM2, certainty }) => ({
    id,
    name,
    hides,
    side,
    count,
    areaM2,
    confidence: certainty,
  })),
  rules: plan.surfaces.rules.map((rule) => ({
    rule: rule.id,
    zone: rule.zone,
    ruleAreaM2: rule.area,
    workedAreaM2: rule.workedArea,
    differenceShare: rule.differenceShare,
  })),
})

function particularsJson(plan: Plan) {
  const found = plan.surfaces.hull?.particulars
  return found
    ? {
        lengthOverallM: found.lengthOverall,
        lengthWaterlineM: found.lengthWaterline,
        beamM: found.beamOverall,
        beamWaterlineM: found.beamWaterline,
        draftM: found.draft,
        freeboardStemM: found.freeboardStem,
        freeboardMidM: found.freeboardMid,
        freeboardSternM: found.freeboardStern,
        displacedM3: found.displacedVolume,
        sheerLengthM: found.sheerLength,
      }
    : {}
}
