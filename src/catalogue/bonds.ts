/**
 * What bonds to what, and what is done in which order: rules of the trade as rows, each cell with its origin.
 * A product's own sheet outranks them. Adding a row needs no code.
 */
import { guessWriter, hidingWriter, orderWriter, practiceWriter, stripWriter } from './bond-fields.ts'
import { bondsBeside } from './bonds-beside.ts'
import { bondsOnFresh } from './bonds-fresh.ts'
import { bondsOnOld } from './bonds-old.ts'
import {
  applicationGuides,
  epoxyGuides,
  gelcoats,
  magazines,
  oneParts,
  refitLogs,
  retailHelp,
  surfacePages,
  yardLogs,
} from './sources.ts'

export const bonds = { ...bondsOnOld, ...bondsOnFresh, ...bondsBeside }

const order = orderWriter

export const workOrder = {
  dewaxFirst: order.row(
    order.from(`${applicationGuides}; ${refitLogs}`, {
      act: 'abrade',
      needs: 'dewax',
      on: 'any',
      age: 'old',
      reason: 'groundIn',
    }),
  ),
  noSolventOnLaminate: order.row(
    order.from(applicationGuides, {
      act: 'solvent wipe',
      notAfter: 'abrade',
      on: 'polyester laminating resin',
      reason: 'softLaminate',
    }),
  ),
  washBlush: order.row(
    order.from(`${retailHelp}; ${epoxyGuides}`, {
      act: 'abrade',
      needs: 'water wash',
      on: 'epoxy',
      age: 'fresh',
      reason: 'blushSpread',
    }),
  ),
  dustBeforeTack: order.row(
    order.from(`${applicationGuides}; ${refitLogs}`, {
      act: 'tack',
      needs: 'dust off',
      on: 'any',
      reason: 'dustUnder',
    }),
  ),
  tackBeforeCoat: order.row(
    order.from(`${applicationGuides}; ${refitLogs}`, {
      act: 'coat',
      needs: 'tack',
      on: 'any',
      reason: 'dustUnder',
    }),
  ),
}

const practice = practiceWriter

export const coatPractice = {
  twoPartFinish: practice.row(
    practice.from(refitLogs, { of: 'two-part polyurethane finish', coats: '3' }),
    practice.assumed({ life: '8', between: 'between-finishes' }),
  ),
  onePartFinish: practice.row(
    practice.from(oneParts, { of: 'one-part finish', coats: '3' }),
    practice.assumed({ life: '4', between: 'between-finishes' }),
  ),
  gelcoatFinish: practice.row(
    practice.from(gelcoats, {
      of: 'gelcoat finish',
      coats: '2',
      filmMost: 'passGelcoat',
      buildMost: 'gelcoatMost',
    }),
    practice.assumed({ life: '10' }),
  ),
  acrylicNonSkid: practice.row(
    practice.from(magazines, { of: 'acrylic non-skid', life: '10' }),
    practice.from(refitLogs, { coats: '2' }),
  ),
  onePartNonSkid: practice.row(practice.assumed({ of: 'one-part non-skid', coats: '2', life: '4' })),
  epoxyPrimer: practice.row(practice.from(applicationGuides, { of: 'epoxy primer', coats: '2' })),
  tieCoat: practice.row(practice.assumed({ of: 'any tie coat', coats: '1' })),
  onePartPrimer: practice.row(practice.assumed({ of: 'any primer', coats: '1' })),
  otherFinish: practice.row(practice.assumed({ of: 'any finish, any non-skid', coats: '2', life: '4' })),
  epoxyFairing: practice.row(
    practice.assumed({ of: 'epoxy fairing, epoxy filler', coats: '1', filmMost: 'passFairing' }),
  ),
  vinylesterFiller: practice.row(
    practice.assumed({ of: 'vinylester filler', coats: '1', filmMost: 'passVinylester' }),
  ),
  polyesterFiller: practice.row(
    practice.assumed({ of: 'polyester filler', coats: '1', filmMost: 'passPolyester' }),
  ),
}

const hiding = hidingWriter

export const hidings = {
  darkBlue: hiding.row(
    hiding.assumed({ colours: 'blue, green, navy', shade: 'dark', over: 'grey, gray', coats: '3' }),
  ),
  bright: hiding.row(hiding.assumed({ colours: 'yellow, red, orange', over: 'white, tinted', coats: '4' })),
  white: hiding.row(hiding.assumed({ colours: 'white', over: 'white', coats: '3' })),
}

const strip = stripWriter

export const strips = {
  oldPaint: strip.row(
    strip.guessedFrom(`${yardLogs}, area guessed`, {
      of: 'one-part, two-part polyurethane, acrylic, lacquer, unknown',
      leaves: 'gelcoat finish',
      rate: '0.55 h/m²',
    }),
  ),
}

const guess = guessWriter

export const oldCoatings = {
  untested: guess.row(
    guess.from(`${retailHelp}; ${surfacePages}`, {
      shows: 'not tested',
      maybe: 'one-part finish, lacquer finish, two-part polyurethane finish, gelcoat finish',
    }),
  ),
  softens: guess.row(
    guess.from(`${retailHelp}; ${surfacePages}`, {
      shows: 'softens',
      maybe: 'one-part finish, lacquer finish',
    }),
  ),
  holds: guess.row(
    guess.from(`${retailHelp}; ${surfacePages}`, {
      shows: 'no effect',
      maybe: 'two-part polyurethane finish, gelcoat finish',
    }),
  ),
}
