/** What is said of runs that cannot be laid wet by who is there, with what would do, each in figures. */
import { airThatDoes, type ChainedPour, type RunFault, runRemedies, workingMinutes } from '#core/coating'
import type { Note } from '#core/note'
import type { Known } from '../known.ts'
import { thinnerFor } from '../sheets/thinners.ts'
import { asked, type Coat, type CoatRun, crewOf, faultOf, potIn } from './coat.ts'

const codes: Readonly<Record<RunFault, string>> = {
  pot: 'pours.potTooShort',
  width: 'pours.runTooWideAlone',
  edge: 'pours.runTooLongAlone',
}

export function notesOf(coat: Coat, chain: readonly ChainedPour[], known: Known): readonly Note[] {
  const faults = coat.runs.flatMap((run, index) => {
    const fault = faultOf(coat, run, known)
    return fault ? [{ fault, run, index }] : []
  })
  // The largest run says it for all: its remedies do for the smaller ones too.
  const worst = faults.toSorted((a, b) => b.run.area - a.run.area)[0]
  if (worst) return [faultNote(coat, worst, known), ...noThinner(coat)]
  const mixedInRun = chain.filter(({ intoWet }) => intoWet).length
  return [
    ...(mixedInRun > 0 && coat.crew === 1 && coat.shows
      ? [
          {
            code: 'pours.mixedAlone',
            severity: 'caution' as const,
            data: { ...about(coat), count: chain.length, mixMinutes: coat.leadMinutes },
          },
        ]
      : []),
    ...slowSections(coat, known),
    ...noThinner(coat),
  ]
}

const about = ({ step, sheet }: Coat) => ({ step: step.id, zone: step.zone ?? '', sheet: sheet.id })

type Worst = { readonly fault: RunFault; readonly run: CoatRun; readonly index: number }

/** 0 stands for no such remedy in its data: a sentence has to be able to say so. */
function faultNote(coat: Coat, { fault, run, index }: Worst, known: Known): Note {
  const start = hottestOf(coat, run)
  const pot = coat.potAt(start)
  const airC = coat.airAt(Math.floor(start / 60))
  const now = crewOf(coat, known)
  const pair =
    coat.crew === 1 ? { ...now, people: 2, pace: pairPace(coat, known), break: 0, most: Infinity } : undefined
  const remedies = runRemedies(asked(coat, run, start), { now, ...(pair ? { pair } : {}) })
  const cooler =
    fault === 'width'
      ? undefined
      : airThatDoes({
          life: remedies.life,
          from: airC,
          least: coat.sheet.airLeastC.value,
          potIn: (one) => potIn(coat.sheet, one),
          induction: pot.induction,
        })
  return {
    code: codes[fault],
    severity: 'fault',
    data: {
      ...about(coat),
      run: index + 1,
      of: coat.runs.length,
      areaM2: run.area,
      mostM2: known.runAloneMostM2.value,
      airC,
      potHours: (Number.isFinite(pot.life) ? pot.life : 0) / 60,
      mixMinutes: coat.leadMinutes,
      edgeMinutes: coat.wetEdgeAt(start),
      pieceM2: remedies.area,
      pieces: remedies.pieces,
      neededHours: remedies.life / 60,
      pairMinutes: remedies.pair?.minutes ?? 0,
      pairPours: remedies.pair?.pours ?? 0,
      cooler: cooler === undefined ? 'none' : 'some',
      coolerC: cooler ?? airC,
    },
  }
}

/** The minute of the run whose pot lasts shortest: what does then does for all of it. */
function hottestOf({ startMinute, pace, leadMinutes, potAt }: Coat, { area }: CoatRun): number {
  const hours = Math.min(24, Math.ceil(area / pace / 60))
  const minutes = Array.from({ length: hours }, (_, hour) => startMinute + hour * 60)
  const work = (minute: number): number => workingMinutes(potAt(minute), leadMinutes)
  return minutes.reduce((least, minute) => (work(minute) < work(least) ? minute : least), startMinute)
}

/** By the figures of the shop for gloss; twice the pace of one for what is only rolled. */
const pairPace = (coat: Coat, { rates }: Known): number =>
  coat.shows ? (coat.pace * rates.tipPairM2PerH.value) / rates.tipAloneM2PerH.value : 2 * coat.pace

/** A section that takes longer than the edge beside it stays wet is told of, where the length of the run is known. */
function slowSections(coat: Coat, known: Known): readonly Note[] {
  if (!coat.shows) return []
  const edgeMinutes = coat.wetEdgeAt(coat.startMinute)
  const widthM = (coat.crew > 1 ? known.sectionM : known.sectionAloneM).value
  const slow = coat.runs.flatMap(({ area, lengthM }) => {
    if (!lengthM) return []
    const minutes = (widthM * (area / lengthM)) / coat.pace
    return minutes > edgeMinutes ? [minutes] : []
  })
  if (slow.length === 0) return []
  const sectionMinutes = Math.max(...slow)
  return [
    {
      code: 'pours.sectionTooSlow',
      severity: 'caution',
      data: {
        ...about(coat),
        sectionMinutes,
        edgeMinutes,
        widthM,
        narrowerM: (widthM * edgeMinutes) / sectionMinutes,
        airC: coat.airAt(Math.floor(coat.startMinute / 60)),
      },
    },
  ]
}

/** Thinner is planned, the sheet lists grades, and none of them is for the air of that hour. */
function noThinner(coat: Coat): readonly Note[] {
  const { sheet, step, thinnerShare } = coat
  const airC = coat.airAt(Math.floor(coat.startMinute / 60))
  const method = step.method ?? 'any'
  if (thinnerShare === 0 || sheet.thinners.length === 0 || thinnerFor(sheet, { method, airC })) return []
  // Told already where none suits the temperature that is planned with either.
  if (!thinnerFor(sheet, { method })) return []
  return [
    {
      code: 'pours.thinnerNone',
      severity: 'caution',
      data: { ...about(coat), name: sheet.name, airC },
    },
  ]
}
