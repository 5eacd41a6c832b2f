/** The mix cards of one coat: parts as a cup measures them, by weight too, with clocks and tray fillings. */
import { type ChainedPour, chainPours, measuredParts, mixMasses, trayFillings } from '#core/coating'
import type { Known } from '../known.ts'
import { thinnerFor } from '../sheets/thinners.ts'
import type { Pour, ResolvedSheet } from '../types.ts'
import type { Coat } from './coat.ts'
import { cupPot, cupsFor, type FillerCup, isTwoPart } from './filler-cup.ts'
import { layingOf } from './laying.ts'

export const chainOf = (coat: Coat): readonly ChainedPour[] =>
  coat.cup ? [cupAfterCup(coat, coat.cup)] : chainPours(asChain(coat))

const asChain = (coat: Coat) => ({
  runs: coat.runs,
  start: coat.startMinute,
  pace: coat.pace,
  lead: coat.leadMinutes,
  potAt: coat.potAt,
})

/** One card says it for all cups of a filler. */
function cupAfterCup(coat: Coat, cup: FillerCup): ChainedPour {
  const { startMinute: from } = coat
  const pot = cupPot(cup, coat.potAt(from))
  const mixAt = from - pot.induction - coat.leadMinutes
  return {
    ...pot,
    mixAt,
    from,
    end: from + workMinutes(coat),
    until: mixAt + pot.life,
    stretches: coat.runs.map(({ area }, run) => ({ run, area })),
    intoWet: false,
  }
}

const areaOf = (stretches: readonly { readonly area: number }[]): number =>
  stretches.reduce((sum, { area }) => sum + area, 0)

/** None where nothing is laid by area: a repair takes what fills it. */
const workMinutes = ({ runs, pace }: Coat): number => (runs.length === 0 ? 0 : areaOf(runs) / pace)

export function cardsOf(coat: Coat, chain: readonly ChainedPour[], known: Known): readonly Pour[] {
  const all = areaOf(coat.runs)
  const { cup, mixedM3 } = coat
  const work = { mixedM3, minutes: workMinutes(coat), pot: coat.potAt(coat.startMinute) }
  const times = cup ? cupsFor(cup, work) : 1
  return chain.map((pour, index) => {
    const share = all > 0 ? areaOf(pour.stretches) / all : 1
    const parts = partsOf(coat, (mixedM3 * share) / times)
    return cardOf(coat, { pour, index, of: chain.length, times, parts }, known)
  })
}

/** In m³, each as the cup measures it. */
type Parts = { readonly partsM3: readonly number[]; readonly thinnerM3: number; readonly additiveM3: number }

const ml = 1e-6

/** Base and hardener in their ratio; thinner and bead go with what they make. */
function partsOf({ sheet, thinnerShare, additiveShare }: Coat, mixedM3: number): Parts {
  const [base = 1, hardener = 0] = sheet.mix.value
  const parts = measuredParts({ volume: mixedM3, base, hardener })
  const thinnerM3 = measured((parts.base + parts.hardener) * thinnerShare)
  return {
    partsM3: isTwoPart(sheet) ? [parts.base, parts.hardener] : [parts.base],
    thinnerM3,
    additiveM3: measured((parts.base + parts.hardener + thinnerM3) * additiveShare),
  }
}

/** Whole millilitres; of a few, tenths, since one more of them may be past what the sheet allows. */
const measured = (volumeM3: number): number =>
  volumeM3 < 5 * ml ? Math.round((volumeM3 / ml) * 10) / 1e7 : Math.round(volumeM3 / ml) / 1e6

/** A brush takes from the pot, a knife from the board. */
const traysOf: ReadonlySet<string> = new Set(['roll and tip', 'roller'])

type Card = {
  readonly pour: ChainedPour
  readonly index: number
  readonly of: number
  readonly times: number
  readonly parts: Parts
}

function cardOf(coat: Coat, { pour, index, of, times, parts }: Card, known: Known): Pour {
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
    times,
    ...(times > 1 && coat.runs.length > 0 ? { everyMinutes: workMinutes(coat) / times } : {}),
    areaM2: areaOf(pour.stretches),
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
