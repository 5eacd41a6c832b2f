/** The limits and shares that a shop works by, one cell each. */
import type { Fields } from '#job'

const temperature = (doc: string) => ({ kind: 'quantity', dimension: 'temperature', doc }) as const
const share = (doc: string) => ({ kind: 'quantity', dimension: 'share', least: 0, most: 1, doc }) as const
const time = (doc: string) => ({ kind: 'quantity', dimension: 'time', doc }) as const
const length = (doc: string) => ({ kind: 'quantity', dimension: 'length', doc }) as const
const area = (doc: string) => ({ kind: 'quantity', dimension: 'area', doc }) as const
const volume = (doc: string) => ({ kind: 'quantity', dimension: 'volume', doc }) as const
const speed = (doc: string) => ({ kind: 'quantity', dimension: 'speed', doc }) as const
const pace = (doc: string) => ({ kind: 'quantity', dimension: 'pace', doc }) as const
const difference = (doc: string) => ({ kind: 'quantity', dimension: 'temperatureDifference', doc }) as const
const number = (doc: string) => ({ kind: 'quantity', dimension: 'number', doc }) as const

const weather = {
  dewMargin: difference('How far the surface stays over the dew point while a film dries.'),
  humidityMost: share('Highest relative humidity to coat in.'),
  humidityBest: share('Relative humidity up to which nothing is lost.'),
  wetTest: time('A wetted patch that dries in this time says the surface can be painted.'),
  windGo: speed('Wind at the hull up to which gloss goes on.'),
  windStop: speed('Wind at the hull over which no gloss goes on.'),
  rainRisky: share('Chance of rain from which an hour is risky in the open.'),
  rainStop: share('Chance of rain from which an hour is out in the open.'),
  wetSince: time('After a night with dew: how long the skin must be dry and over the dew margin.'),
  wipedSince: time('The same when it was wiped dry.'),
  wetFloorMargin: difference('Least margin to the dew point at which the floor may be wetted against dust.'),
  wetFloorHumidity: share('Highest relative humidity at which the floor may be wetted.'),
} as const satisfies Fields

const buying = {
  reserveFinish: share('Bought over the need: finish.'),
  reservePrimer: share('Bought over the need: primer and tie coat.'),
  reserveFiller: share('Bought over the need: filler and fairing compound.'),
  touchUp: volume('Finish put by for later repairs, each colour.'),
  hardenerOpen: time('Age of an opened hardener that no longer goes on gloss in sight.'),
  quoteWarn: share('Forecast over quote that is spoken about.'),
  quoteAlarm: share('Forecast over quote that stops work until agreed.'),
} as const satisfies Fields

const losses = {
  lossRoller: share('Left in roller, tray and pot.'),
  lossBrush: share('Left in brush and pot.'),
  lossKnife: share('Left on knife and board.'),
  lossRough: share('More, on a rough surface.'),
  lossUneven: share('More, for uneven film.'),
  lossWind: share('More, in wind: drying in the tray.'),
  textureGrit: number('How many times the paint of a smooth surface goes on bonded grit or bead.'),
  textureMoulded: number('The same on a moulded pattern.'),
  sandedPrimer: share('Share of a coat of primer or filler that is sanded off again.'),
  sandedFinish: share('Share of a coat of finish that is sanded off before the next.'),
} as const satisfies Fields

const coating = {
  gritStep: number('How many times finer the next grit of a ladder is at most.'),
  gritOverFilm: number('Grain over the dry film that levels its scratches, at most.'),
  trayPour: volume('Paint in the tray at a time.'),
  mixLead: time('The next pour is mixed so long before it is wanted, after its induction.'),
  fillerLead: time('Filler is stirred so long before it is spread.'),
  puttyCup: volume('Filler that cures with peroxide: mixed at a time, at most.'),
  fillerCup: volume('Other two-part filler, and laminating resin: mixed at a time, at most.'),
  fillerPotShare: share('A cup of filler is spread within this share of its pot life.'),
  paceTwo: pace('Roll and tip, two people.'),
  paceOne: pace('Roll and tip, one person.'),
  wetEdge: time('How long the wet edge of a gloss takes the next section without a mark, at 20 °C.'),
  stirAgain: time('Bead sinks in the pot: it is stirred again so often.'),
  runOneMost: area('Largest run for one person with a wet edge.'),
  section: length('Width rolled before it is tipped.'),
  sectionOne: length('The same for one person.'),
  tipOverlap: length('How far tipping goes back into the patch before.'),
  tipFlow: time('How long brush marks go on levelling at 20 °C.'),
  dryWetEdge: length('Bare edge kept free of bead, for the next patch to join.'),
  dewaxPatch: area('Patch wiped before the solvent dries.'),
  solventRub: time('Solvent under film, to find out what the old coating is.'),
  stripeAboveWater: length('Least height of a topside finish over the floating line.'),
  padArea: area('Hull that one stand pad hides.'),
  keelOffGround: length('Height of the keel on its blocks.'),
  stagingOver: length('Sheer above the ground from which staging is wanted.'),
} as const satisfies Fields

const tape = {
  tapeSunShare: share('Share of its rating that tape keeps in sun.'),
  tapeStages: number('How often a primed stripe is taped: sand, prime, sand, finish.'),
  pullBeadLeast: time('Tape off a bead or textured coat, no sooner.'),
  pullBeadMost: time('Tape off a bead or textured coat, no later.'),
  pullTwoPartLeast: time('Tape off two-part gloss, no sooner.'),
  pullTwoPartMost: time('Tape off two-part gloss, no later.'),
  pullOnePartMost: time('Tape off one-part, no later: it is pulled wet.'),
} as const satisfies Fields

const handling = {
  coverTwoPart: time('Age of two-part gloss before a cover touches it, at 20 °C.'),
  coverOnePart: time('Age of one-part before a cover touches it, at 20 °C.'),
  washAfter: time('Age of a finish before it is washed.'),
  darkSkin: temperature('Dark paint in full sun, one yard’s test.'),
  lightSkin: temperature('Light paint beside it.'),
} as const satisfies Fields

const building = {
  passFairing: length('Thickest pass of epoxy fairing compound.'),
  passVinylester: length('Thickest pass of vinylester filler.'),
  passPolyester: length('Thickest pass of polyester putty.'),
  passGelcoat: length('Thickest pass of gelcoat.'),
  gelcoatRaw: length('Gelcoat laid on before it is sanded.'),
  gelcoatFinal: length('Gelcoat after sanding.'),
  gelcoatMost: length('Gelcoat over which it cracks.'),
  catalystMost: share('Most catalyst in gelcoat, by weight.'),
  bevel: number('Length of a repair bevel over its depth.'),
  bevelsMerge: length('Bevels nearer than this are made one.'),
  dishHole: length('Largest hole that is dished and filled.'),
  backedHole: length('Largest hole that takes backing and a ply each side; larger ones are bevelled.'),
  clearCore: length('Core cleared back round a hole before it is potted.'),
  injectMost: area('Largest dry core that may be injected.'),
  tankDistance: length('Damage nearer to a tank or a load than this is a surveyor’s.'),
  siliconeRound: length('Cleaned and tested round old silicone.'),
  matPliesALift: number('Most plies of 450 g/m² mat laid in one go.'),
  woodAt65: share('Moisture wood keeps in a shed at 65 % humidity, 21 °C.'),
  woodAt80: share('The same at 80 %.'),
  woodAt90: share('The same at 90 %.'),
} as const satisfies Fields

const factors = {
  refitFactor: number('Hours to bed and refit over hours to take off.'),
  stripGuessFactor: number('An honest guess at taking hardware off is multiplied by this.'),
  reachFree: number('Hours for a fitting whose nut is free.'),
  reachHatch: number('Nut reached through a hatch: times this.'),
  reachLiner: number('Nut behind a liner: times this.'),
  reachBonded: number('Bonded in: times this.'),
  oldPaintDiscs: number('Discs worn on old soft paint: times this.'),
} as const satisfies Fields

const surroundings = {
  wetYard: length('How far round the boat dust is laid with water.'),
  moveCars: length('How far cars are moved from a coat that drips.'),
} as const satisfies Fields

export const limitFields = {
  ...weather,
  ...buying,
  ...losses,
  ...coating,
  ...tape,
  ...handling,
  ...building,
  ...factors,
  ...surroundings,
} as const satisfies Fields

export type LimitFields = typeof limitFields
