/** The mix cards of one coat: parts in whole millilitres that add up, by weight too, with clocks and tray fillings. */
import { type ChainedPour, chainPours, mixMasses, roundedTable, trayFillings } from '#core/coating'
import type { Known } from '../known.ts'
import { pourOf } from '../quantities.ts'
import { thinnerFor } from '../sheets/thinners.ts'
import type { Pour, ResolvedSheet } from '../types.ts'
import type { Coat } from './coat.ts'
import { layingOf } from './laying.ts'

export const chainOf = (coat: Coat): readonly ChainedPour[] =>
  chainPours({
    runs: coat.runs,
    start: coat.startMinute,
    pace: coat.pace,
    lead: coat.leadMinutes,
    potAt: coat.potAt,
  })

export function cardsOf(coat: Coat, chain: readonly ChainedPour[], known: Known): readonly Pour[] {
  const parts = wholeParts(coat, chain)
  return chain.map((pour, index) =>
    cardOf(coat, { pour, index, of: chain.length, parts: parts[index]! }, known),
  )
}

/** In m³, each a whole number of steps. */
type Parts = { readonly partsM3: readonly number[]; readonly thinnerM3: number; readonly additiveM3: number }

const ml = 1e-6
/** Under this a whole millilitre is too coarse: a few drops of catalyst matter, m³. */
const fineBelowM3 = 20 * ml

/** What the cup reads adds up, on each card and over the cards of the coat; bead is stirred in on top of it. */
function wholeParts(coat: Coat, chain: readonly ChainedPour[]): readonly Parts[] {
  const all = chain.flatMap(({ stretches }) => stretches).reduce((sum, { area }) => sum + area, 0)
  const exact = chain.map(({ stretches }) => {
    const area = stretches.reduce((sum, stretch) => sum + stretch.area, 0)
    return pourOf({
      mixedM3: (coat.mixedM3 * area) / all,
      sheet: coat.sheet,
      thinnerShare: coat.thinnerShare,
      additiveShare: coat.additiveShare,
    })
  })
  const two = isTwoPart(coat.sheet)
  const cups = exact.map((pour) => [
    pour.baseVolume,
    ...(two ? [pour.hardenerVolume] : []),
    pour.thinnerVolume,
  ])
  const step = cups.flat().some((volume) => volume > 0 && volume < fineBelowM3) ? ml / 10 : ml
  const whole = (table: readonly (readonly number[])[]) =>
    roundedTable(table.map((row) => row.map((volume) => volume / step))).map((row) =>
      row.map((steps) => (steps * Math.round(step / 1e-7)) / 1e7),
    )
  const beads = whole(exact.map((pour) => [pour.additiveVolume]))
  return whole(cups).map((row, index) => ({
    partsM3: row.slice(0, -1),
    thinnerM3: row.at(-1)!,
    additiveM3: beads[index]![0]!,
  }))
}

const isTwoPart = (sheet: ResolvedSheet): boolean => (sheet.mix.value[1] ?? 0) > 0

/** A brush takes from the pot, a knife from the board. */
const traysOf: ReadonlySet<string> = new Set(['roll and tip', 'roller'])

type Card = {
  readonly pour: ChainedPour
  readonly index: number
  readonly of: number
  readonly parts: Parts
}

function cardOf(coat: Coat, { pour, index, of, parts }: Card, known: Known): Pour {
  const { sheet, step, runs } = coat
  const readyM3 = [...parts.partsM3, parts.thinnerM3].reduce((sum, part) => sum + part, 0)
  const useFromMinute = Math.round(pour.from)
  const airC = coat.airAt(Math.floor(pour.from / 60))
  const mixAtMinute = useFromMinute - Math.ceil(pour.induction + coat.leadMinutes)
  const fillings = trayFillings({
    ready: traysOf.has(step.method ?? '') ? Math.round(readyM3 / ml) : 0,
    usual: known.trayPourM3.value / ml,
    most: (known.trayPourM3.seen?.[1] ?? known.trayPourM3.value) / ml,
  })
  return {
    step: step.id,
    zone: step.zone ?? '',
    sheet: sheet.id,
    nr: index + 1,
    of,
    areaM2: pour.stretches.reduce((sum, { area }) => sum + area, 0),
    runs: pour.stretches.map(({ run, area }) => ({
      nr: run + 1,
      of: runs.length,
      where: runs[run]!.where,
      areaM2: area,
      runM2: runs[run]!.area,
    })),
    laying: layingOf(coat, pour, known),
    intoWet: pour.intoWet,
    readyM3,
    ...parts,
    ...massesOf(sheet, parts),
    trayM3: fillings.map((filling) => filling / 1e6),
    ...(parts.additiveM3 > 0 ? { stirMinutes: known.stirAgainMinutes.value } : {}),
    ...gradeOf(coat, { airC, thinnerM3: parts.thinnerM3 }),
    airC,
    mixAtMinute,
    useFromMinute,
    ...(Number.isFinite(pour.life) ? { useUntilMinute: mixAtMinute + Math.floor(pour.life) } : {}),
    certainty: coat.certainty,
  }
}

function gradeOf(
  { sheet, step }: Coat,
  { airC, thinnerM3 }: Pick<Pour, 'airC' | 'thinnerM3'>,
): Pick<Pour, 'thinnerGrade'> {
  const grade = thinnerM3 > 0 ? thinnerFor(sheet, { method: step.method ?? 'any', airC })?.name : undefined
  return grade ? { thinnerGrade: grade } : {}
}

/** By weight too, where the sheet gives the densities: of what the card says, not of what it was rounded from. */
function massesOf(sheet: ResolvedSheet, { partsM3, thinnerM3 }: Parts): Pick<Pour, 'partsKg' | 'thinnerKg'> {
  const { densityA, densityB, densityThinner } = sheet
  const [base = 0, hardener] = partsM3
  if (!densityA || (hardener !== undefined && !densityB)) return {}
  const masses = mixMasses(
    { baseVolume: base, hardenerVolume: hardener ?? 0, thinnerVolume: thinnerM3 },
    { base: densityA.value, hardener: densityB?.value ?? 0, thinner: densityThinner?.value ?? 0 },
  )
  return {
    partsKg: hardener === undefined ? [masses.baseMass] : [masses.baseMass, masses.hardenerMass],
    ...(densityThinner ? { thinnerKg: masses.thinnerMass } : {}),
  }
}
