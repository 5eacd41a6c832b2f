/** What holds on what is put on in this job: epoxy, fillers, resin. */
import { bondWriter } from './bond-fields.ts'
import { epoxies, epoxyGuides, gelcoatLeaflet, refitLogs, retailHelp } from './sources.ts'

const { from, assumed, guessedFrom, row } = bondWriter

const primers = 'epoxy primer, epoxy tie coat'
const bond = { aspect: 'bond' } as const
const overEpoxy = { aspect: 'bond', under: 'epoxy' } as const
const keyed = { key: 'always', gritCoarsest: 'P80', gritFinest: 'P120' } as const

export const bondsOnFresh = {
  epoxyGelcoat: row(
    from(`${retailHelp}; ${epoxyGuides}`, {
      ...overEpoxy,
      over: 'gelcoat',
      verdict: 'care',
      reason: 'freeAmine',
      waterWash: 'yes',
      solvent: 'wipe',
      key: 'always',
      gritCoarsest: 'P80',
      gritFinest: 'P80',
      only: 'looks only',
      wait: '7 d',
      until: 'full cure',
    }),
  ),
  epoxyGelcoatNever: row(
    from(gelcoatLeaflet, {
      ...overEpoxy,
      over: 'gelcoat',
      verdict: 'no',
      dissent: 'yes',
      reason: 'freeAmine',
    }),
  ),
  epoxyPolyester: row(
    from(`${retailHelp}; ${refitLogs}`, {
      ...overEpoxy,
      over: 'polyester',
      verdict: 'no',
      reason: 'freeAmine',
      clear: 'use epoxy',
    }),
  ),
  epoxyVinylester: row(
    assumed({
      ...overEpoxy,
      over: 'vinylester',
      verdict: 'care',
      reason: 'bothWays',
      waterWash: 'yes',
      key: 'always',
      gritCoarsest: 'P80',
      gritFinest: 'P80',
      only: 'test patch',
    }),
  ),
  vinylesterGelcoat: row(
    assumed({
      ...bond,
      under: 'vinylester',
      over: 'gelcoat, vinylester, polyester',
      verdict: 'yes',
      reason: 'bothWays',
      key: 'past the window',
      gritCoarsest: 'P80',
      gritFinest: 'P120',
    }),
  ),
  vinylesterEpoxy: row(
    guessedFrom('epoxy on old polyester, which it is a kin of', {
      ...bond,
      under: 'vinylester',
      over: 'epoxy',
      verdict: 'yes',
      reason: 'keyOnly',
      ...keyed,
    }),
  ),
  vinylesterTwoPart: row(
    guessedFrom('polyester putty, which it is a kin of', {
      ...bond,
      under: 'vinylester',
      over: 'two-part polyurethane',
      verdict: 'no',
      reason: 'styreneLeft',
      tie: primers,
    }),
  ),
  vinylesterOnePart: row(
    assumed({
      ...bond,
      under: 'vinylester, polyester filler',
      over: 'one-part, acrylic',
      verdict: 'care',
      reason: 'styreneLeft',
      tie: primers,
      only: 'small areas',
      key: 'always',
      gritCoarsest: 'P120',
      gritFinest: 'P220',
    }),
  ),
  puttyEpoxy: row(
    guessedFrom(retailHelp, {
      ...bond,
      under: 'polyester filler',
      over: 'epoxy',
      verdict: 'care',
      reason: 'styreneLeft',
      only: 'small areas',
      wait: '24 h',
      until: 'full cure',
      key: 'always',
      gritCoarsest: 'P80',
      gritFinest: 'P150',
    }),
  ),
  puttyTwoPart: row(
    guessedFrom(retailHelp, {
      ...bond,
      under: 'polyester filler',
      over: 'two-part polyurethane',
      verdict: 'no',
      reason: 'styreneLeft',
      tie: primers,
    }),
  ),
  puttyStyrene: row(
    assumed({
      ...bond,
      under: 'polyester filler',
      over: 'polyester, gelcoat',
      verdict: 'yes',
      reason: 'sameCure',
      ...keyed,
    }),
  ),
  freshGelcoat: row(
    assumed({
      ...bond,
      under: 'gelcoat',
      age: 'fresh',
      over: 'gelcoat',
      verdict: 'yes',
      reason: 'sameCure',
      key: 'past the window',
      gritCoarsest: 'P80',
      gritFinest: 'P220',
    }),
  ),
  fairingPrimer: row(
    from(retailHelp, {
      ...bond,
      under: 'epoxy fairing, epoxy filler, epoxy laminating resin',
      over: 'epoxy',
      verdict: 'yes',
      reason: 'sameFamily',
      waterWash: 'yes',
      ...keyed,
    }),
  ),
  fairingFinish: row(
    assumed({
      ...bond,
      under: 'epoxy fairing, epoxy filler, epoxy laminating resin',
      over: 'two-part polyurethane, one-part, acrylic',
      verdict: 'no',
      reason: 'porous',
      tie: primers,
    }),
  ),
  fairingFairing: row(
    assumed({
      ...bond,
      under: 'epoxy fairing, epoxy filler, epoxy laminating resin',
      over: 'epoxy fairing, epoxy filler, epoxy laminating resin',
      verdict: 'yes',
      reason: 'sameFamily',
      waterWash: 'yes',
      key: 'past the window',
      gritCoarsest: 'P60',
      gritFinest: 'P120',
    }),
  ),
  epoxyTwoPart: row(
    from(epoxies, {
      ...bond,
      under: primers,
      over: 'two-part polyurethane',
      verdict: 'yes',
      reason: 'freshBonds',
      waterWash: 'yes',
      key: 'past the window',
      gritCoarsest: 'P220',
      gritFinest: 'P320',
    }),
  ),
  epoxyOnePart: row(
    from(retailHelp, {
      ...bond,
      under: primers,
      over: 'one-part',
      verdict: 'yes',
      reason: 'solventSafeBase',
      waterWash: 'yes',
      key: 'always',
    }),
    assumed({ gritCoarsest: 'P180', gritFinest: 'P320' }),
  ),
  epoxyAcrylic: row(
    assumed({
      ...bond,
      under: primers,
      over: 'acrylic',
      verdict: 'yes',
      reason: 'keyOnly',
      waterWash: 'yes',
      key: 'always',
      gritCoarsest: 'P180',
      gritFinest: 'P320',
    }),
  ),
  epoxyEpoxy: row(
    from(epoxies, {
      ...bond,
      under: primers,
      over: 'epoxy',
      verdict: 'yes',
      reason: 'freshBonds',
      waterWash: 'yes',
      key: 'past the window',
    }),
    assumed({ gritCoarsest: 'P80', gritFinest: 'P320' }),
  ),
}
