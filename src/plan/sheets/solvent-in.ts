/** Solvent in a layer as it is put on, and whether the rules that the job names allow it. */
import { mostThinner, vocLessWater } from '#core/coating'
import type { Note } from '#core/note'
import type { ResolvedSheet, Sure, VocLimit, ZoneLayer } from '../types.ts'

/** Organic thinners weigh 0.80 to 0.90 kg a litre; assumed where the sheet does not give it. */
const USUAL_THINNER = 850

/** Sheet and thinner together; nothing where the sheet says nothing of solvent. */
export function solventIn(sheet: ResolvedSheet, thinnerShare: Sure<number>): Pick<ZoneLayer, 'vocKgPerM3'> {
  if (!sheet.vocKgPerM3) return {}
  const share = isWaterBorne(sheet) ? 0 : thinnerShare.value
  const value = vocLessWater([
    { volume: 1, vocMass: sheet.vocKgPerM3.value },
    { volume: share, vocMass: share * (sheet.densityThinner?.value ?? USUAL_THINNER) },
  ])
  return value === undefined ? {} : { vocKgPerM3: { value, certainty: sheet.vocKgPerM3.certainty } }
}

/** An acrylic is thinned with water, which does not count. */
const isWaterBorne = ({ family }: ResolvedSheet): boolean => family === 'acrylic'

/** Gloss of a yacht two-part is over the line between high and extreme; a one-part's is not, assumed. */
function kindOf({ family, role, generic = '' }: ResolvedSheet): string {
  if (role === 'finish') return family === 'two-part polyurethane' ? 'extreme high gloss' : 'high gloss'
  if (role === 'primer' && generic.includes('high-build')) return 'high-build primer'
  return role === 'primer' || role === 'tie coat' ? 'finish primer' : 'other'
}

export function solventNotes(
  layer: ZoneLayer,
  sheet: ResolvedSheet,
  { limits, rules }: { readonly limits: readonly VocLimit[]; readonly rules: string },
): readonly Note[] {
  const what = kindOf(sheet)
  const found = limits.find((one) => one.rules === rules && one.what === what)
  const { vocKgPerM3: voc } = layer
  if (!found || !voc || !sheet.vocKgPerM3 || voc.value <= found.limit) return []
  const share = mostThinner({
    voc: sheet.vocKgPerM3.value,
    volume: 1,
    thinnerDensity: sheet.densityThinner?.value ?? USUAL_THINNER,
    limit: found.limit,
  })
  return [
    {
      code: 'buildup.solventOver',
      severity: 'warning',
      data: {
        zone: layer.zone,
        layer: layer.layer,
        name: layer.name,
        vocKgPerM3: voc.value,
        limitKgPerM3: found.limit,
        thinnerMostShare: share,
        isOverUnthinned: share === 0,
        rules,
        vocWhat: what,
      },
      source: found.source,
    },
  ]
}
