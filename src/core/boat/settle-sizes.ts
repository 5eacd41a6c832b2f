/** Fills the sizes nobody gave, with a note for each, and settles the ones that hang on one another. */

import type { Note } from '#core/note'
import { assumption, fault } from './fault.ts'
import { overhangForward } from './hull-shape.ts'
import type { Bilge, HullSizes, SettledSizes } from './hull-sizes.ts'

const degree = Math.PI / 180

/** Proportions taken where a size is missing: common practice for boats of 5 to 12 m, assumed throughout. */
type Proportions = {
  readonly waterlineOfLength: number
  readonly transomOfBeam: number
  readonly draftOfBeam: number
  readonly midOfStemFreeboard: number
  readonly sternOfStemFreeboard: number
  readonly chineOfBeam: number
  readonly deadrise: number
  readonly deadriseTransom: number
}

const proportions: Readonly<Record<Bilge, Proportions>> = {
  'hard-chine': {
    waterlineOfLength: 0.88,
    transomOfBeam: 0.9,
    draftOfBeam: 0.16,
    midOfStemFreeboard: 0.82,
    sternOfStemFreeboard: 0.76,
    chineOfBeam: 0.84,
    deadrise: 20 * degree,
    deadriseTransom: 18 * degree,
  },
  'round-bilge': {
    waterlineOfLength: 0.84,
    transomOfBeam: 0.7,
    draftOfBeam: 0.18,
    midOfStemFreeboard: 0.8,
    sternOfStemFreeboard: 0.76,
    chineOfBeam: 0.94,
    deadrise: 14 * degree,
    deadriseTransom: 14 * degree,
  },
}

type Chosen = { readonly value: number; readonly notes: readonly Note[] }

const lengthOr = (given: number | undefined, code: string, assumed: number): Chosen =>
  given === undefined
    ? { value: assumed, notes: [assumption(code, { valueM: assumed })] }
    : { value: given, notes: [] }

const angleOr = (given: number | undefined, code: string, assumed: number): Chosen =>
  given === undefined
    ? { value: assumed, notes: [assumption(code, { valueRad: assumed })] }
    : { value: given, notes: [] }

/** Two angles nearer than this are the same to anyone with a level. */
const anglesAgreeWithin = 2 * degree

/** Half breadth of the corner where a bottom of this deadrise meets a side of this flare. */
const cornerOf = (
  sizes: HullSizes,
  { draft, freeboard, deadrise, flare }: Record<'draft' | 'freeboard' | 'deadrise' | 'flare', number>,
): number => {
  const out = Math.tan(flare)
  const half = sizes.beam / 2
  return sizes.chineHeight === undefined
    ? (half - out * (freeboard + draft)) / (1 - out * Math.tan(deadrise))
    : half - out * (freeboard - sizes.chineHeight)
}

const settleDraft = (sizes: HullSizes, typical: Proportions): Chosen => {
  const { draft, deadrise, chineBeam, chineHeight } = sizes
  const known = deadrise !== undefined && chineBeam !== undefined && chineHeight !== undefined
  const worked = known ? (Math.tan(deadrise) * chineBeam) / 2 - chineHeight : 0
  if (draft !== undefined || !(worked > 0)) {
    return lengthOr(draft, 'boat.draftAssumed', typical.draftOfBeam * sizes.beam)
  }
  return { value: worked, notes: [{ code: 'boat.draftWorked', severity: 'info', data: { valueM: worked } }] }
}

/** Length that the stem overhangs the water by, and the length on the water that it leaves. */
function settleWaterline(sizes: HullSizes, typical: Proportions): Chosen {
  const { lengthOverall, lengthWaterline, stemRake, freeboardStem, form } = sizes
  if (lengthWaterline !== undefined || stemRake === undefined)
    return lengthOr(lengthWaterline, 'boat.lengthWaterlineAssumed', typical.waterlineOfLength * lengthOverall)
  const overhang = (freeboardStem * Math.tan(stemRake)) / overhangForward[form]
  const value = Math.min(Math.max(lengthOverall - overhang, 0.5 * lengthOverall), lengthOverall)
  return { value, notes: [{ code: 'boat.lengthWaterlineWorked', severity: 'info', data: { valueM: value } }] }
}

function stemNotes(
  { stemRake, lengthWaterline, lengthOverall, freeboardStem, form }: HullSizes,
  waterline: number,
): readonly Note[] {
  if (stemRake === undefined || lengthWaterline === undefined) return []
  const worked = Math.atan2((lengthOverall - waterline) * overhangForward[form], freeboardStem)
  if (Math.abs(worked - stemRake) < anglesAgreeWithin) return []
  return [
    { code: 'boat.stemRakeDisagrees', severity: 'info', data: { givenRad: stemRake, workedRad: worked } },
  ]
}

type Body = { readonly draft: number; readonly freeboard: number }

const settleChineBeam = (sizes: HullSizes, typical: Proportions, body: Body): Chosen => {
  const assumed = typical.chineOfBeam * sizes.beam
  if (sizes.chineBeam !== undefined || sizes.flare === undefined) {
    return lengthOr(sizes.chineBeam, 'boat.chineBeamAssumed', assumed)
  }
  const deadrise = sizes.deadrise ?? typical.deadrise
  const worked = 2 * cornerOf(sizes, { ...body, deadrise, flare: sizes.flare })
  const value = Math.min(Math.max(worked, 0.3 * sizes.beam), sizes.beam)
  return { value, notes: [{ code: 'boat.chineBeamWorked', severity: 'info', data: { valueM: value } }] }
}

const settleDeadrise = (sizes: HullSizes, typical: Proportions, draft: number, chineBeam: number): Chosen => {
  const { deadrise, chineHeight } = sizes
  if (chineHeight === undefined) return angleOr(deadrise, 'boat.deadriseAssumed', typical.deadrise)
  const value = Math.atan2(2 * (chineHeight + draft), chineBeam)
  const agrees = deadrise === undefined || Math.abs(value - deadrise) < anglesAgreeWithin
  const data = { givenRad: deadrise ?? value, workedRad: value }
  return { value, notes: agrees ? [] : [{ code: 'boat.deadriseDisagrees', severity: 'info', data }] }
}

const flareNotes = (sizes: HullSizes, body: Body, chineBeam: number, deadrise: number): readonly Note[] => {
  if (sizes.flare === undefined) return []
  const rise = body.freeboard + body.draft - (Math.tan(deadrise) * chineBeam) / 2
  const worked = Math.atan2((sizes.beam - chineBeam) / 2, rise)
  if (Math.abs(worked - sizes.flare) < anglesAgreeWithin) return []
  const data = { givenRad: sizes.flare, workedRad: worked }
  return [{ code: 'boat.flareDisagrees', severity: 'info', data }]
}

const cornerFaults = (body: Body, chineBeam: number, deadrise: number): readonly Note[] => {
  const height = (Math.tan(deadrise) * chineBeam) / 2 - body.draft
  if (deadrise >= 0 && height < body.freeboard) return []
  return [
    fault('boat.chineOutsideSection', {
      heightM: height,
      keelHeightM: -body.draft,
      sheerHeightM: body.freeboard,
    }),
  ]
}

export type Settled = { readonly sizes: SettledSizes; readonly notes: readonly Note[] }

/**
 * All sizes, each assumed one with a note `boat.<size>Assumed`. Of sizes that contradict one another the ones a
 * tape measures (heights and beams) win over angles, with a note. Expects sizes without faults.
 */
export const settleSizes = (sizes: HullSizes): Settled => {
  const typical = proportions[sizes.form]
  const { lengthOverall, beam, freeboardStem } = sizes
  const waterline = settleWaterline(sizes, typical)
  const transom = lengthOr(sizes.beamTransom, 'boat.beamTransomAssumed', typical.transomOfBeam * beam)
  const mid = lengthOr(
    sizes.freeboardMid,
    'boat.freeboardMidAssumed',
    typical.midOfStemFreeboard * freeboardStem,
  )
  const stern = lengthOr(
    sizes.freeboardStern,
    'boat.freeboardSternAssumed',
    typical.sternOfStemFreeboard * freeboardStem,
  )
  const draft = settleDraft(sizes, typical)
  const body = { draft: draft.value, freeboard: mid.value }
  const chine = settleChineBeam(sizes, typical, body)
  const deadrise = settleDeadrise(sizes, typical, draft.value, chine.value)
  const deadriseTransom = angleOr(
    sizes.deadriseTransom,
    'boat.deadriseTransomAssumed',
    sizes.deadrise === undefined ? typical.deadriseTransom : deadrise.value,
  )
  const chosen = [waterline, transom, mid, stern, draft, chine, deadrise, deadriseTransom]
  return {
    sizes: {
      form: sizes.form,
      lengthOverall,
      beam,
      freeboardStem,
      lengthWaterline: waterline.value,
      beamTransom: transom.value,
      freeboardMid: mid.value,
      freeboardStern: stern.value,
      draft: draft.value,
      chineBeam: chine.value,
      deadrise: deadrise.value,
      deadriseTransom: deadriseTransom.value,
      ...(sizes.chineHeight === undefined ? {} : { chineHeight: sizes.chineHeight }),
    },
    notes: [
      ...chosen.flatMap((one) => one.notes),
      ...stemNotes(sizes, waterline.value),
      ...flareNotes(sizes, body, chine.value, deadrise.value),
      ...cornerFaults(body, chine.value, deadrise.value),
    ],
  }
}
