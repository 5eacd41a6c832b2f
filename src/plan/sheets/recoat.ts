/** When what may go on a product: its recoat windows as its sheet lists them, or its shortest and longest wait. */
import { type CureTable, hoursAt, type RecoatWindows, recoatWindows, type WindowFault } from '#core/cure'
import type { Note } from '#core/note'
import { planningC, type Work } from '#job'
import type { Recoat, ResolvedSheet } from '../types.ts'

type WindowItem = Work['windows'][number]

export type RecoatRead = { readonly recoat: readonly Recoat[]; readonly notes: readonly Note[] }

/** The windows of one sheet, for each thing that they name as going on. */
export function readWindows(
  sheet: { readonly id: string; readonly name: string },
  windows: readonly WindowItem[],
): RecoatRead {
  const own = windows.filter((one) => one.sheet === sheet.id)
  const nexts = [...new Set(own.map(({ next }) => next ?? 'anything'))]
  const read = nexts.map((next) => {
    const rows = own.filter((one) => (one.next ?? 'anything') === next).map(rowOf)
    return { next, ...recoatWindows(rows) }
  })
  return {
    recoat: read.flatMap(({ next, windows: found }) => (found ? [{ next, windows: found }] : [])),
    notes: read.flatMap(({ next, faults }) => faults.map((fault) => noteOf(sheet, next, fault))),
  }
}

const rowOf = ({ at, from, until, sanded }: WindowItem) => ({
  airC: at?.value ?? planningC,
  fromH: from?.value ?? 0,
  ...(until ? { untilH: until.value } : {}),
  sanded: sanded ?? false,
})

const codes = {
  overlap: 'buildup.windowsOverlap',
  uneven: 'buildup.windowsUneven',
  sandedBefore: 'buildup.windowsSanded',
  notMonotone: 'buildup.windowsOdd',
} as const satisfies Record<WindowFault['code'], string>

function noteOf(
  { id, name }: { readonly id: string; readonly name: string },
  next: string,
  fault: WindowFault,
): Note {
  const { code, ...data } = fault
  return {
    code: codes[code],
    severity: code === 'notMonotone' ? 'caution' : 'fault',
    data: { sheet: id, name, next, ...data },
  }
}

/** What `over` waits for on `below`: by the row that names it most closely. */
export function recoatFor(below: ResolvedSheet, over: Pick<ResolvedSheet, 'id' | 'family'>): RecoatWindows {
  const named = (next: string) => below.recoat.find((one) => one.next === next)?.windows
  return (
    (over.id === below.id ? named('itself') : undefined) ??
    named(over.family) ??
    named('anything') ??
    fromClocks(below)
  )
}

const fromClocks = ({ clocks: { recoatLeast, recoatMost } }: ResolvedSheet): RecoatWindows => ({
  holes: [],
  ...(recoatLeast ? { least: recoatLeast.value } : {}),
  ...(recoatMost ? { unsanded: recoatMost.value } : {}),
})

/** The temperatures of the sheet's own rows at which the longest wait is over before the shortest. */
export function shutBeforeOpen(least: CureTable, most: CureTable): readonly number[] {
  const rows = [...new Set([...least, ...most].map(({ airC }) => airC))].sort((a, b) => a - b)
  return rows.filter((airC) => {
    const { hours, stopped } = hoursAt(least, airC, 'least')
    return !stopped && hours > hoursAt(most, airC, 'most').hours
  })
}
