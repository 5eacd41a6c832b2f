/** What stands beside the bond itself: states of a surface, places, the look, the weather, what is no thinner. */
import { bondWriter } from './bond-fields.ts'
import { applicationGuides, refitLogs, retailHelp, surfacePages } from './sources.ts'

const { from, assumed, row } = bondWriter

const darkUnder = { aspect: 'looks', verdict: 'yes', reason: 'scratchShows', shade: 'dark' } as const

export const bondsBeside = {
  silicone: row(
    from(applicationGuides, {
      aspect: 'state',
      under: 'any',
      state: 'silicone',
      over: 'any',
      verdict: 'no',
      reason: 'beadsUp',
      clear: 'clean and drop test',
    }),
  ),
  wax: row(
    from(applicationGuides, {
      aspect: 'state',
      under: 'any',
      state: 'wax',
      over: 'any',
      verdict: 'no',
      reason: 'beadsUp',
      dewax: 'yes',
      clear: 'clean and drop test',
    }),
  ),
  softened: row(
    from(applicationGuides, {
      aspect: 'state',
      under: 'one-part',
      state: 'softened',
      over: 'epoxy, two-part polyurethane',
      verdict: 'no',
      reason: 'lifts',
      clear: 'strip',
    }),
  ),
  softenedSealed: row(
    from(`${retailHelp}; ${surfacePages}`, {
      aspect: 'state',
      under: 'one-part',
      state: 'softened',
      over: 'epoxy',
      verdict: 'care',
      dissent: 'yes',
      reason: 'heldOut',
      only: 'test patch',
    }),
  ),
  tacky: row(
    assumed({
      aspect: 'state',
      under: 'polyester, vinylester, gelcoat',
      state: 'tacky',
      over: 'epoxy, two-part polyurethane, one-part, acrylic',
      verdict: 'no',
      reason: 'airInhibited',
      clear: 'film or wax cure',
    }),
  ),
  freshStyrene: row(
    assumed({
      aspect: 'state',
      under: 'gelcoat, polyester laminating resin',
      age: 'fresh',
      over: 'epoxy, two-part polyurethane, one-part, acrylic',
      verdict: 'care',
      reason: 'airInhibited',
      waterWash: 'yes',
      only: 'waxed last',
    }),
  ),
  alcohol: row(
    assumed({
      aspect: 'state',
      under: 'any',
      state: 'alcohol',
      over: 'two-part polyurethane',
      verdict: 'no',
      reason: 'slowToLeave',
      clear: 'flash off',
    }),
  ),
  alcoholThinner: row(
    assumed({
      aspect: 'thinner',
      under: 'alcohol',
      over: 'two-part polyurethane',
      verdict: 'no',
      reason: 'notAThinner',
      clear: 'its own thinner',
    }),
  ),
  finishBelowWater: row(
    assumed({
      aspect: 'place',
      under: 'any',
      over: 'any finish, any non-skid',
      where: 'below water',
      verdict: 'no',
      reason: 'blisters',
      clear: 'clear of the water',
    }),
  ),
  gelcoatBelowWater: row(
    assumed({
      aspect: 'place',
      under: 'any',
      over: 'gelcoat finish, antifouling finish',
      where: 'below water',
      verdict: 'yes',
      reason: 'sameCure',
    }),
  ),
  puttyBelowWater: row(
    assumed({
      aspect: 'place',
      under: 'any',
      over: 'polyester filler',
      where: 'below water',
      verdict: 'no',
      reason: 'drinksWater',
      clear: 'use epoxy',
    }),
  ),
  vinylesterBelowWater: row(
    from(retailHelp, {
      aspect: 'place',
      under: 'any',
      over: 'vinylester filler',
      where: 'below water',
      verdict: 'care',
      reason: 'labelSays',
      only: 'label below water',
    }),
  ),
  rawEpoxy: row(
    from(refitLogs, {
      aspect: 'weather',
      under: 'epoxy',
      over: 'sun',
      verdict: 'no',
      reason: 'chalks',
      tie: 'two-part polyurethane finish, one-part finish',
    }),
  ),
  rawFiller: row(
    assumed({
      aspect: 'weather',
      under: 'polyester filler, vinylester, polyester laminating resin',
      over: 'sun',
      age: 'fresh',
      verdict: 'no',
      reason: 'drinksWater',
      tie: 'epoxy primer',
    }),
  ),
  darkOnPrimer: row(
    assumed({
      ...darkUnder,
      under: 'epoxy primer, epoxy tie coat',
      over: 'two-part polyurethane finish, one-part finish',
      gritCoarsest: 'P400',
      gritFinest: 'P400',
    }),
  ),
}
