/** What holds on what was on the boat before: gelcoat, laminate, old paint. */
import { bondWriter } from './bond-fields.ts'
import {
  applicationGuides,
  epoxyGuides,
  oneParts,
  ownersForums,
  refitLogs,
  retailHelp,
  surfacePages,
} from './sources.ts'

const { from, assumed, row } = bondWriter

const gelcoat = { aspect: 'bond', under: 'gelcoat', dewax: 'yes', key: 'always' } as const
const laminate = { aspect: 'bond', under: 'polyester laminating resin', key: 'always' } as const
const primers = 'epoxy primer, epoxy tie coat'
const P80 = { gritCoarsest: 'P80', gritFinest: 'P80' } as const

export const bondsOnOld = {
  gelcoatEpoxyGuide: row(
    from(applicationGuides, {
      ...gelcoat,
      over: primers,
      verdict: 'yes',
      reason: 'keyOnly',
      gritCoarsest: 'P100',
      gritFinest: 'P150',
    }),
  ),
  gelcoatEpoxySheet: row(
    from(oneParts, {
      ...gelcoat,
      over: primers,
      verdict: 'yes',
      reason: 'keyOnly',
      gritCoarsest: 'P80',
      gritFinest: 'P120',
    }),
  ),
  gelcoatFairing: row(
    assumed({
      ...gelcoat,
      over: 'epoxy fairing, epoxy laminating resin, epoxy filler',
      verdict: 'yes',
      reason: 'keyOnly',
      gritCoarsest: 'P60',
      gritFinest: 'P120',
    }),
  ),
  gelcoatOnePart: row(
    from(retailHelp, {
      ...gelcoat,
      over: 'one-part',
      verdict: 'yes',
      reason: 'weakSolvent',
      gritCoarsest: 'P120',
      gritFinest: 'P220',
    }),
  ),
  gelcoatOnePartSheet: row(
    from(oneParts, {
      ...gelcoat,
      over: 'one-part',
      verdict: 'yes',
      reason: 'weakSolvent',
      gritCoarsest: 'P180',
      gritFinest: 'P320',
    }),
  ),
  gelcoatTwoPart: row(
    from(retailHelp, {
      ...gelcoat,
      over: 'two-part polyurethane',
      verdict: 'no',
      reason: 'solventSafeBase',
      tie: primers,
    }),
  ),
  gelcoatAcrylic: row(
    assumed({
      ...gelcoat,
      over: 'acrylic',
      verdict: 'yes',
      reason: 'keyOnly',
      gritCoarsest: 'P80',
      gritFinest: 'P220',
    }),
  ),
  gelcoatGelcoat: row(
    assumed({
      ...gelcoat,
      age: 'old',
      over: 'gelcoat',
      verdict: 'yes',
      reason: 'sameCure',
      gritCoarsest: 'P60',
      gritFinest: 'P220',
    }),
  ),
  gelcoatPolyester: row(
    assumed({
      ...gelcoat,
      over: 'polyester',
      verdict: 'yes',
      reason: 'sameCure',
      gritCoarsest: 'P60',
      gritFinest: 'P120',
    }),
  ),
  styreneVinylester: row(
    from(retailHelp, {
      aspect: 'bond',
      under: 'gelcoat, polyester laminating resin, polyester filler',
      over: 'vinylester',
      verdict: 'yes',
      reason: 'sameCure',
      key: 'always',
      ...P80,
    }),
  ),
  laminateEpoxy: row(
    from(applicationGuides, {
      ...laminate,
      over: 'epoxy primer, epoxy tie coat, epoxy fairing, epoxy filler',
      verdict: 'yes',
      reason: 'softLaminate',
      solvent: 'never',
      gritCoarsest: 'P40',
      gritFinest: 'P80',
    }),
  ),
  laminateRepair: row(
    from(epoxyGuides, {
      ...laminate,
      over: 'epoxy laminating resin',
      verdict: 'yes',
      reason: 'bondsBetter',
      solvent: 'never',
      ...P80,
    }),
  ),
  laminatePolyester: row(
    assumed({
      ...laminate,
      over: 'polyester, gelcoat',
      verdict: 'yes',
      reason: 'sameCure',
      solvent: 'never',
      gritCoarsest: 'P40',
      gritFinest: 'P80',
    }),
  ),
  laminateTwoPart: row(
    assumed({
      ...laminate,
      over: 'two-part polyurethane',
      verdict: 'no',
      reason: 'solventSafeBase',
      tie: primers,
    }),
  ),
  laminateOnePart: row(
    assumed({
      ...laminate,
      over: 'one-part, acrylic',
      verdict: 'no',
      reason: 'porous',
      tie: primers,
    }),
  ),
  oldOnePartTwoPart: row(
    from(`${applicationGuides}; ${retailHelp}; ${surfacePages}`, {
      aspect: 'bond',
      under: 'one-part',
      over: 'two-part polyurethane',
      verdict: 'no',
      reason: 'lifts',
      clear: 'strip or barrier',
      tie: 'epoxy primer',
    }),
  ),
  oldOnePartReports: row(
    from(refitLogs, {
      aspect: 'bond',
      under: 'one-part',
      age: 'old',
      over: 'two-part polyurethane',
      verdict: 'care',
      dissent: 'yes',
      reason: 'hardFilm',
    }),
  ),
  oldOnePartEpoxy: row(
    from(`${applicationGuides}; ${retailHelp}`, {
      aspect: 'bond',
      under: 'one-part',
      age: 'old',
      over: 'epoxy',
      verdict: 'care',
      reason: 'heldOut',
      dewax: 'yes',
      key: 'always',
      only: 'test patch',
    }),
    assumed({ gritCoarsest: 'P120', gritFinest: 'P220' }),
  ),
  freshOnePartEpoxy: row(
    assumed({
      aspect: 'bond',
      under: 'one-part',
      age: 'fresh',
      over: 'epoxy',
      verdict: 'no',
      reason: 'lifts',
      clear: 'epoxy first',
    }),
  ),
  onePartOnePart: row(
    from(oneParts, {
      aspect: 'bond',
      under: 'one-part',
      over: 'one-part',
      verdict: 'yes',
      reason: 'weakSolvent',
      key: 'always',
    }),
    assumed({ gritCoarsest: 'P180', gritFinest: 'P320' }),
  ),
  onePartFresh: row(
    from(oneParts, {
      aspect: 'bond',
      under: 'one-part',
      age: 'fresh',
      over: 'one-part',
      verdict: 'yes',
      reason: 'weakSolvent',
      key: 'always',
    }),
    assumed({ gritCoarsest: 'P220', gritFinest: 'P400' }),
  ),
  onePartGrip: row(
    assumed({
      aspect: 'bond',
      under: 'one-part non-skid',
      age: 'fresh',
      over: 'one-part non-skid',
      verdict: 'yes',
      reason: 'weakSolvent',
    }),
  ),
  onePartAcrylic: row(
    assumed({
      aspect: 'bond',
      under: 'one-part',
      over: 'acrylic',
      verdict: 'yes',
      reason: 'weakSolvent',
      key: 'always',
      gritCoarsest: 'P180',
      gritFinest: 'P320',
    }),
  ),
  onePartStyrene: row(
    assumed({
      aspect: 'bond',
      under: 'one-part, two-part polyurethane, acrylic, lacquer',
      over: 'polyester, vinylester, gelcoat',
      verdict: 'no',
      reason: 'lifts',
      clear: 'strip',
    }),
  ),
  paintFiller: row(
    assumed({
      aspect: 'bond',
      under: 'one-part, two-part polyurethane, acrylic, lacquer',
      age: 'old',
      over: 'polyester filler, vinylester filler, epoxy filler, epoxy fairing',
      verdict: 'care',
      reason: 'softBelow',
      dewax: 'yes',
      key: 'always',
      gritCoarsest: 'P40',
      gritFinest: 'P120',
      only: 'ground away',
    }),
  ),
  twoPartPaint: row(
    from(retailHelp, {
      aspect: 'bond',
      under: 'two-part polyurethane',
      over: 'one-part, two-part polyurethane',
      verdict: 'yes',
      reason: 'hardFilm',
      key: 'always',
    }),
    assumed({ gritCoarsest: 'P220', gritFinest: 'P320' }),
  ),
  twoPartFresh: row(
    from(refitLogs, {
      aspect: 'bond',
      under: 'two-part polyurethane',
      age: 'fresh',
      over: 'two-part polyurethane',
      verdict: 'yes',
      reason: 'freshBonds',
      key: 'past the window',
      gritCoarsest: 'P320',
      gritFinest: 'P400',
    }),
  ),
  twoPartEpoxy: row(
    assumed({
      aspect: 'bond',
      under: 'two-part polyurethane',
      over: 'epoxy',
      verdict: 'yes',
      reason: 'hardFilm',
      key: 'always',
      gritCoarsest: 'P80',
      gritFinest: 'P220',
    }),
  ),
  twoPartAcrylic: row(
    assumed({
      aspect: 'bond',
      under: 'two-part polyurethane',
      over: 'acrylic',
      verdict: 'yes',
      reason: 'hardFilm',
      key: 'always',
      gritCoarsest: 'P220',
      gritFinest: 'P320',
    }),
  ),
  lacquer: row(
    from(ownersForums, {
      aspect: 'bond',
      under: 'lacquer',
      over: 'two-part polyurethane, epoxy',
      verdict: 'no',
      reason: 'dissolves',
      clear: 'strip',
    }),
  ),
  lacquerWeak: row(
    assumed({
      aspect: 'bond',
      under: 'lacquer',
      over: 'one-part, acrylic',
      verdict: 'care',
      reason: 'dissolves',
      key: 'always',
      gritCoarsest: 'P220',
      gritFinest: 'P320',
      only: 'test patch',
    }),
  ),
  acrylicStrong: row(
    assumed({
      aspect: 'bond',
      under: 'acrylic',
      over: 'two-part polyurethane, epoxy',
      verdict: 'no',
      reason: 'dissolves',
      clear: 'strip',
    }),
  ),
  acrylicOnePart: row(
    assumed({
      aspect: 'bond',
      under: 'acrylic',
      over: 'one-part',
      verdict: 'care',
      reason: 'dissolves',
      only: 'test patch',
      key: 'always',
      gritCoarsest: 'P180',
      gritFinest: 'P320',
    }),
  ),
  acrylicAcrylic: row(
    from(refitLogs, {
      aspect: 'bond',
      under: 'acrylic',
      over: 'acrylic',
      verdict: 'yes',
      reason: 'sameFamily',
    }),
  ),
  antifouling: row(
    assumed({
      aspect: 'bond',
      under: 'antifouling',
      over: 'any',
      verdict: 'no',
      reason: 'softLeaching',
      clear: 'remove to a line',
      tie: 'epoxy primer',
    }),
  ),
  emulsionMat: row(
    assumed({
      aspect: 'bond',
      under: 'emulsion-bound mat',
      over: 'epoxy',
      verdict: 'no',
      reason: 'binderStays',
      clear: 'stitched or woven',
    }),
  ),
}
