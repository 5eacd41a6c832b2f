/** How a work rate is written: person-hours, or clock time, for one of something. */
import type { Fields } from '#job'
import { type Row, rowWriter } from './row.ts'

export const rateFields = {
  time: {
    kind: 'quantity',
    dimension: 'time',
    need: 'required',
    doc: 'Time for one of what stands in `per`.',
  },
  least: { kind: 'quantity', dimension: 'time', doc: 'Quickest that is recorded or thought likely.' },
  most: { kind: 'quantity', dimension: 'time', doc: 'Slowest that is recorded or thought likely.' },
  per: {
    kind: 'choice',
    choices: ['m²', 'm', 'piece', 'coat', 'pour', 'reading', 'session', 'job'],
    need: 'required',
    doc: 'One of what: a square or running metre, a piece, a coat on one zone, a working session.',
  },
  counts: {
    kind: 'choice',
    choices: ['person-hours', 'clock'],
    need: 'required',
    doc: 'Whether more people make it shorter, or the clock runs whoever is there.',
  },
} as const satisfies Fields

export type RateFields = typeof rateFields
export type RateRow = Row<RateFields>

const writer = rowWriter<RateFields>()

export type Per = RateFields['per']['choices'][number]

/** A time and the range it was seen or guessed in. */
export type Spell = readonly [time: string, least?: string, most?: string]

const cellsOf = (per: Per, counts: RateFields['counts']['choices'][number], spell: Spell) => {
  const [time, least, most] = spell
  return {
    time,
    ...(least === undefined ? {} : { least }),
    ...(most === undefined ? {} : { most }),
    per,
    counts,
  }
}

/** Common practice, no source. */
export const guess = (per: Per, ...spell: Spell): RateRow =>
  writer.row(writer.assumed(cellsOf(per, 'person-hours', spell)))

/** Somebody wrote the hours down. */
export const recorded = (source: string, per: Per, ...spell: Spell): RateRow =>
  writer.row(writer.from(source, cellsOf(per, 'person-hours', spell)))

/** Somebody wrote hours down, but the area or the boat had to be guessed. */
export const leaning = (basis: string, per: Per, ...spell: Spell): RateRow =>
  writer.row(writer.guessedFrom(basis, cellsOf(per, 'person-hours', spell)))

/** Common practice that passes by the clock, however many there are. */
export const clockGuess = (per: Per, ...spell: Spell): RateRow =>
  writer.row(writer.assumed(cellsOf(per, 'clock', spell)))
