/**
 * What goes wrong while a boat is coated: what may become of the coat, how soon, and with what it is sanded.
 * Kept beside the catalogue, not in it: no plan depends on it until somebody writes a mishap in the log.
 */
import { assumed, from, guessedFrom, type MishapFields, row } from './mishap-fields.ts'
import type { Table } from './row.ts'
import { applicationGuides, epoxyGuides, magazines, refitLogs, tradeArticles } from './sources.ts'

const eyewash = 'ANSI/ISEA Z358.1, flow of an eyewash'
const flow = 'magazine, brush marks at 20 °C'

const people = {
  eyeSplash: row(
    from(eyewash, { rinse: '15 min' }),
    assumed({ group: 'people', signal: 'danger', within: '10 s' }),
  ),
  unwell: row(assumed({ group: 'people', signal: 'danger', within: '1 min' })),
  onSkin: row(assumed({ group: 'people', signal: 'warning', within: '1 min', rinse: '15 min' })),
}

const fire = {
  smoke: row(assumed({ group: 'fire', signal: 'danger', within: '10 s' })),
  spill: row(assumed({ group: 'fire', signal: 'warning', within: '1 min' })),
}

const pot = {
  potKicks: row(assumed({ group: 'pot', signal: 'warning', within: '1 min' })),
  potOnHull: row(
    from(refitLogs, { films: 'wiped off, sanded off' }),
    assumed({ group: 'pot', within: '5 min', wipedWait: '30 min', sandWait: '24 h', sandGrit: 'P220' }),
  ),
}

const wet = {
  runs: row(
    from(applicationGuides, { films: 'stands, wiped off, sanded off' }),
    guessedFrom(flow, { within: '90 s' }),
    assumed({
      group: 'wet film',
      wipedWait: '30 min',
      sandWait: '24 h',
      sandGrit: 'P320',
      spotGrit: 'P320',
      spotShare: '5 %',
    }),
  ),
  craters: row(
    from(applicationGuides, { films: 'wiped off, sanded off' }),
    assumed({ group: 'wet film', within: '5 min', wipedWait: '30 min', sandWait: '24 h', sandGrit: 'P220' }),
  ),
  brushMarks: row(
    from(magazines, { spotGrit: 'P320' }),
    guessedFrom(flow, { within: '90 s' }),
    assumed({
      group: 'wet film',
      films: 'stands, sanded off',
      sandWait: '16 h',
      sandGrit: 'P320',
      spotShare: '100 %',
    }),
  ),
  orangePeel: row(
    from(magazines, { spotGrit: 'P320' }),
    assumed({
      group: 'wet film',
      within: '90 s',
      films: 'stands, sanded off',
      sandWait: '16 h',
      sandGrit: 'P320',
      spotShare: '100 %',
    }),
  ),
  lapMark: row(
    from(epoxyGuides, { films: 'stands, sanded off' }),
    assumed({ group: 'wet film', sandWait: '16 h', sandGrit: 'P320', spotGrit: 'P320', spotShare: '10 %' }),
  ),
  dust: row(
    from(refitLogs, { films: 'stands, sanded off' }),
    assumed({ group: 'wet film', sandWait: '16 h', sandGrit: 'P320', spotGrit: 'P400', spotShare: '10 %' }),
  ),
  rollerBits: row(
    from(refitLogs, { films: 'stands, sanded off' }),
    assumed({ group: 'wet film', sandWait: '16 h', sandGrit: 'P320', spotGrit: 'P320', spotShare: '5 %' }),
  ),
  rain: row(
    assumed({
      group: 'wet film',
      within: '5 min',
      films: 'sanded off, stands, wiped off',
      wipedWait: '60 min',
      sandWait: '24 h',
      sandGrit: 'P320',
      spotGrit: 'P320',
      spotShare: '30 %',
    }),
  ),
  dew: row(
    from(applicationGuides, { films: 'stands, sanded off' }),
    assumed({ group: 'wet film', sandWait: '24 h', sandGrit: 'P320', spotGrit: 'P320', spotShare: '100 %' }),
  ),
}

const dry = {
  soft: row(
    assumed({
      group: 'dry film',
      films: 'stands, wiped off, sanded off',
      wipedWait: '60 min',
      sandWait: '48 h',
      sandGrit: 'P120',
      spotGrit: 'P320',
      spotShare: '100 %',
    }),
  ),
  blisters: row(
    from(tradeArticles, { films: 'sanded off, stands' }),
    assumed({ group: 'dry film', sandWait: '24 h', sandGrit: 'P220', spotGrit: 'P320', spotShare: '10 %' }),
  ),
  peeling: row(
    from(applicationGuides, { films: 'sanded off, stands' }),
    assumed({ group: 'dry film', sandGrit: 'P120', sandWait: '24 h', spotGrit: 'P120', spotShare: '10 %' }),
  ),
  missedSpot: row(
    assumed({ group: 'dry film', within: '90 s', films: 'stands', spotGrit: 'P320', spotShare: '5 %' }),
  ),
  pinholes: row(
    from(applicationGuides, { films: 'stands, sanded off' }),
    assumed({ group: 'dry film', sandWait: '24 h', sandGrit: 'P220', spotGrit: 'P320', spotShare: '10 %' }),
  ),
  lifting: row(
    from(applicationGuides, { films: 'sanded off' }),
    assumed({ group: 'dry film', sandWait: '48 h', sandGrit: 'P120' }),
  ),
  missedWindow: row(
    from(applicationGuides, { films: 'stands' }),
    assumed({ group: 'dry film', spotGrit: 'P320', spotShare: '100 %' }),
  ),
}

const edges = {
  tapeBleed: row(
    assumed({ group: 'edges', films: 'stands', sandWait: '24 h', spotGrit: 'P400', spotShare: '2 %' }),
  ),
  tapePulls: row(
    assumed({
      group: 'edges',
      films: 'stands, sanded off',
      sandWait: '48 h',
      sandGrit: 'P320',
      spotGrit: 'P320',
      spotShare: '5 %',
    }),
  ),
}

const all = { ...people, ...fire, ...pot, ...wet, ...dry, ...edges }

export type MishapId = keyof typeof all

export const mishaps: Table<MishapFields, MishapId> = all
