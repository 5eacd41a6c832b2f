/** A mishap's figures for its sentences, and the entry of the log that a choice makes of it. */
import { type MishapId, mishaps } from '#catalogue'
import type { RawCells } from '#job'
import { read } from '#units'

export type Film = 'stands' | 'wiped off' | 'sanded off'

export const filmsOf = (id: MishapId): readonly Film[] =>
  (mishaps[id].cells.films ?? '').split(', ').filter((film) => film !== '') as readonly Film[]

/** As the sentences of mishaps name them; times in several units, so that each says what is usual. */
export function mishapFigures(id: MishapId): Readonly<Record<string, number | string>> {
  const { within, rinse, wipedWait, sandWait, sandGrit, spotGrit } = mishaps[id].cells
  const hours = { within: hoursOf(within), rinse: hoursOf(rinse), wiped: hoursOf(wipedWait) }
  const known = {
    withinSeconds: times(hours.within, 3600),
    withinMinutes: times(hours.within, 60),
    rinseMinutes: times(hours.rinse, 60),
    wipedWaitMinutes: times(hours.wiped, 60),
    sandWaitHours: hoursOf(sandWait),
    sandGrit,
    spotGrit,
  }
  return Object.fromEntries(
    Object.entries(known).flatMap(([key, value]) => (value === undefined ? [] : [[key, value]])),
  )
}

const times = (hours: number | undefined, factor: number): number | undefined =>
  hours === undefined ? undefined : Math.round(hours * factor)

function hoursOf(text: string | undefined): number | undefined {
  const reading = text === undefined ? undefined : read(text, 'time')
  return reading?.ok ? reading.quantity.value : undefined
}

export type Broken = {
  readonly id: MishapId
  /** Of the coat that went wrong; none where no coat is in it. */
  readonly step?: string | undefined
  readonly film?: Film | undefined
  /** As typed: how much of the surface is sanded where the coat stands. */
  readonly share?: string | undefined
}

/** The cells beside `at`: what the plan needs to put it right. */
export function entryCells({ id, step, film, share }: Broken): RawCells {
  const cells = { kind: 'mishap', mishap: id }
  if (step === undefined || film === undefined) return step === undefined ? cells : { ...cells, step }
  return { ...cells, step, film, ...mendingCells(id, { film, share }) }
}

function mendingCells(
  id: MishapId,
  { film, share }: { readonly film: Film; readonly share: string | undefined },
): RawCells {
  const { wipedWait, sandWait, sandGrit, spotGrit, spotShare } = mishaps[id].cells
  if (film === 'wiped off') return some({ wait: wipedWait })
  if (film === 'sanded off') return some({ grit: sandGrit, wait: sandWait })
  return some({
    grit: spotGrit,
    share: share === undefined || share === '' ? spotShare : share,
    wait: sandWait,
  })
}

const some = (cells: Readonly<Record<string, string | undefined>>): RawCells =>
  Object.fromEntries(
    Object.entries(cells).flatMap(([key, text]) => (text === undefined ? [] : [[key, text]])),
  )
