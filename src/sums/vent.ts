/** Vent: fresh air for a solvent that evaporates, against fire and for the lungs, each figure with its table. */
import { findSolvent, type LelFigure, type Solvent, type SolventFigure, solvents } from '#catalogue'
import type { Note } from '#core/note'
import { airForExposure, airForLel, lelFractions, molarVolume25C, vapourPerLiquid } from '#core/safety'
import { defineSum, type HowLine, how, result, type SumResult } from './sum.ts'
import { SumError } from './sum-error.ts'

const fireRule = 'OSHA 29 CFR 1910.94(c)(6)(ii) (25 % of the LEL); 29 CFR 1915.13(b)(3)(i) (10 %)'
const lungRule = 'ACGIH, Industrial Ventilation, ch. 2'
const cubicFoot = 0.028316846592
const usGallon = 0.003785411784
/** K of the ventilation manuals runs from 1, perfect mixing, to 10. */
const usualMixing = '5'

export const vent = defineSum({
  id: 'vent',
  doc: 'Fresh air for an evaporating solvent.',
  inputs: [
    {
      name: 'solvent',
      dimension: 'text',
      required: true,
      limits: {},
      doc: 'Solvent by name.',
      example: 'n-butyl acetate',
    },
    {
      name: 'rate',
      dimension: 'volumeRate',
      required: true,
      limits: { over: 0, atMost: 10 },
      doc: 'Solvent that evaporates, without the solids of the paint.',
      example: '0.5 L/h',
    },
    {
      name: 'mixing',
      dimension: 'number',
      required: false,
      default: usualMixing,
      limits: { atLeast: 1, atMost: 20 },
      doc: 'How badly the room mixes: 1 perfect, 3 to 10 real rooms.',
      example: usualMixing,
    },
  ],
  work: (given) => {
    const solvent = solventNamed(given.text('solvent'))
    const liquidRate = given.number('rate')
    const mixing = given.number('mixing')
    const lel = solvent.lelPct.map((figure) => lelAir(solvent, figure, liquidRate))
    const worst = lel.reduce((most, air) => (air.quarter > most.quarter ? air : most))
    const lungs = lungAir(solvent, { liquidRate, mixing })
    return {
      results: [
        result('solvent', solvent.id, 'text'),
        ...flow('airQuarterLel', worst.quarter),
        ...flow('airTenthLel', worst.tenth),
        result('lelShare', worst.lelShare, 'share'),
        result('lelSource', worst.figure.source, 'text'),
        ...flow('airExposure', lungs.air),
        result('limitPpm', lungs.limit.value, 'number'),
        result('limitSource', lungs.limit.source, 'text'),
        result('vapourM3PerHour', liquidRate * worst.vapour, 'volumeRate'),
      ],
      how: [...lel.map(lelLine), lungs.line],
      notes: [
        ...figureNotes(solvent, lel, lungs.limit),
        ...mixingNotes(given.stated('mixing'), mixing),
        ...ventNotes(worst, lungs.air),
      ],
      sources: [
        fireRule,
        lungRule,
        ...new Set([...lel.map(({ figure }) => figure.source), lungs.limit.source]),
      ],
    }
  },
})

function solventNamed(text: string): Solvent {
  const solvent = findSolvent(text)
  if (solvent) return solvent
  const known = solvents.map(({ name }) => name).join(', ')
  throw new SumError(
    'sums.unknownSolvent',
    { field: 'solvent', text, known },
    `solvent: unknown, got "${text}", expected one of ${known}`,
  )
}

/** `…M3PerHour` and `…Cfm`. */
function flow(name: string, air: number): SumResult[] {
  return [result(`${name}M3PerHour`, air, 'volumeRate'), result(`${name}Cfm`, air / cubicFoot / 60, 'number')]
}

type LelAir = {
  readonly figure: LelFigure
  readonly lelShare: number
  /** m³ by m³. */
  readonly vapour: number
  /** m³/h at a quarter and at a tenth of the limit. */
  readonly quarter: number
  readonly tenth: number
}

/** The regulation's limit goes with the regulation's vapour; every other with density and molar mass at 25 °C. */
function lelAir(solvent: Solvent, figure: LelFigure, liquidRate: number): LelAir {
  const printed = figure.table === 'g11' ? solvent.vapourFt3PerGal : undefined
  const vapour = printed ? (printed.value * cubicFoot) / usGallon : vapourAt25C(solvent)
  const lelShare = figure.value / 100
  const air = (fraction: number) => liquidRate * airForLel({ vapourPerLiquid: vapour, lelShare, fraction })
  return { figure, lelShare, vapour, quarter: air(lelFractions.spray), tenth: air(lelFractions.shipyard) }
}

function vapourAt25C(solvent: Solvent): number {
  return vapourPerLiquid({
    specificGravity: solvent.specificGravity.value,
    molarMass: solvent.molarMassGPerMol.value / 1000,
    molarVolume: molarVolume25C,
  })
}

function lelLine({ figure, lelShare, vapour, quarter, tenth }: LelAir): HowLine {
  return how('sums.ventLel', {
    table: figure.source,
    lelShare,
    vapourLitresPerLitre: vapour,
    quarterM3PerHour: quarter,
    tenthM3PerHour: tenth,
  })
}

type LungAir = { readonly air: number; readonly limit: SolventFigure; readonly line: HowLine }

/** By the lower of the two limits for a shift. */
function lungAir(solvent: Solvent, work: { readonly liquidRate: number; readonly mixing: number }): LungAir {
  const { pelPpm, relPpm } = solvent
  const limit = relPpm.value <= pelPpm.value ? relPpm : pelPpm
  const vapour = vapourAt25C(solvent)
  const air = airForExposure({ ...work, vapourPerLiquid: vapour, limitShare: limit.value * 1e-6 })
  const line = how('sums.ventExposure', {
    table: limit.source,
    limitPpm: limit.value,
    mixing: work.mixing,
    vapourM3PerHour: work.liquidRate * vapour,
    airM3PerHour: air,
  })
  return { air, limit, line }
}

function figureNotes(solvent: Solvent, lel: readonly LelAir[], limit: SolventFigure): Note[] {
  const shares = lel.map(({ lelShare }) => lelShare)
  const lowShare = Math.min(...shares)
  const highShare = Math.max(...shares)
  const used = [solvent.specificGravity, solvent.molarMassGPerMol, limit, ...lel.map(({ figure }) => figure)]
  const notes: Note[] = []
  if (lowShare < highShare)
    notes.push({ code: 'sums.ventTablesDiffer', severity: 'info', data: { lowShare, highShare } })
  if (used.some(({ sure }) => sure === 'memory'))
    notes.push({ code: 'sums.ventFromMemory', severity: 'assumed', data: { solvent: solvent.name } })
  return notes
}

function mixingNotes(stated: boolean, mixing: number): Note[] {
  return stated ? [] : [{ code: 'sums.ventMixing', severity: 'assumed', data: { mixing }, source: lungRule }]
}

function ventNotes(worst: LelAir, exposureAir: number): Note[] {
  const factor = exposureAir / worst.tenth
  return [
    { code: 'sums.ventFireOnly', severity: 'warning', data: { factor }, source: fireRule },
    { code: 'sums.ventNoFlame', severity: 'danger', data: {}, source: 'product safety sheets' },
    { code: 'sums.ventNotIsocyanate', severity: 'warning', data: {}, source: 'NIOSH Pocket Guide' },
    { code: 'sums.ventSafetySheet', severity: 'caution', data: {}, source: 'assumed' },
  ]
}
