/** The shop's limits and shares where neither the sheet nor the person says: one row, every cell with its origin. */
import type { LimitFields } from './limit-fields.ts'
import { type Row, rowWriter } from './row.ts'
import {
  applicationGuides,
  dewPractice,
  gelcoats,
  moistureTables,
  refitLogs,
  retailHelp,
  spreadTable,
  spreadTableAndPage,
  yardLogs,
} from './sources.ts'

const { from, assumed, guessedFrom, row } = rowWriter<LimitFields>()

const film = from(dewPractice, { dewMargin: '3 °C', humidityMost: '85 %' })
const yachtGuides = from(applicationGuides, { humidityBest: '65 %', dewaxPatch: '0.37 m²' })
const wetTest = from(retailHelp, { wetTest: '15 min' }, { wetTest: ['10 min', '15 min'] })

const weather = assumed({
  windGo: '4 m/s',
  windStop: '6 m/s',
  rainRisky: '20 %',
  rainStop: '50 %',
  wetSince: '60 min',
  wipedSince: '30 min',
  wetFloorMargin: '5 °C',
  wetFloorHumidity: '65 %',
})

const buying = assumed({
  reserveFinish: '15 %',
  reservePrimer: '10 %',
  reserveFiller: '25 %',
  touchUp: '250 ml',
  hardenerOpen: '8 weeks',
  quoteWarn: '10 %',
  quoteAlarm: '15 %',
})

const rollerLoss = from(spreadTableAndPage, { lossRoller: '12 %' }, { lossRoller: ['10 %', '20 %'] })
const brushLoss = from(spreadTable, { lossBrush: '12 %' }, { lossBrush: ['10 %', '15 %'] })
const losses = from(
  spreadTable,
  { lossRough: '12 %', lossUneven: '8 %', lossWind: '15 %' },
  {
    lossRough: ['5 %', '20 %'],
    lossUneven: ['5 %', '10 %'],
    lossWind: ['5 %', '30 %'],
  },
)
/** A can that covers 9.8 m²/L went under 2.5 m²/L over broadcast sand. */
const grit = from(refitLogs, { textureGrit: '4' })
const sanded = assumed({ textureMoulded: '1.5', sandedPrimer: '50 %', sandedFinish: '20 %' })
const knifeLoss = guessedFrom('the least loss of a roller', { lossKnife: '10 %' })

const coating = assumed(
  {
    gritStep: '2',
    gritOverFilm: '2.5',
    trayPour: '250 ml',
    mixLead: '5 min',
    fillerLead: '1 min',
    puttyCup: '150 ml',
    fillerCup: '600 ml',
    fillerPotShare: '50 %',
    wetEdge: '5 min',
    stirAgain: '5 min',
    paceTwo: '7 m²/h',
    paceOne: '4 m²/h',
    runOneMost: '8 m²',
    sectionOne: '300 mm',
    solventRub: '10 min',
    stripeAboveWater: '50 mm',
    padArea: '0.1 m²',
    keelOffGround: '300 mm',
    stagingOver: '1.8 m',
  },
  { trayPour: ['200 ml', '300 ml'], puttyCup: ['100 ml', '150 ml'], fillerCup: ['500 ml', '800 ml'] },
)

const logged = from(
  refitLogs,
  {
    section: '500 mm',
    tipOverlap: '250 mm',
    tipFlow: '90 s',
    dryWetEdge: '300 mm',
    tapeStages: '4',
    stripGuessFactor: '2',
    wetYard: '6 m',
    moveCars: '10 m',
  },
  { section: ['450 mm', '600 mm'], tipOverlap: ['200 mm', '300 mm'] },
)

const tape = assumed({
  tapeSunShare: '50 %',
  pullBeadLeast: '1 h',
  pullBeadMost: '3 h',
  pullTwoPartLeast: '2 h',
  pullTwoPartMost: '6 h',
  pullOnePartMost: '15 min',
})

const handling = assumed({
  coverTwoPart: '14 d',
  coverOnePart: '28 d',
  washAfter: '7 d',
})

const sunTest = from(`${yardLogs}, one test`, { darkSkin: '54 °C', lightSkin: '32 °C' })

const fillers = assumed(
  { passFairing: '6 mm', passVinylester: '6 mm', passPolyester: '6 mm' },
  { passVinylester: ['6 mm', '12 mm'] },
)

const gelcoat = from(
  gelcoats,
  {
    passGelcoat: '10 mil',
    gelcoatRaw: '30 mil',
    gelcoatFinal: '20 mil',
    gelcoatMost: '25 mil',
    catalystMost: '2 %',
  },
  {
    gelcoatRaw: ['30 mil', '35 mil'],
    gelcoatFinal: ['20 mil', '25 mil'],
    catalystMost: ['2 %', '3 %'],
  },
)

const wood = from(moistureTables, { woodAt65: '12 %', woodAt80: '16 %', woodAt90: '20.5 %' })

const repairs = assumed(
  {
    bevel: '12',
    bevelsMerge: '10 mm',
    dishHole: '12 mm',
    backedHole: '25 mm',
    clearCore: '10 mm',
    injectMost: '0.2 m²',
    tankDistance: '300 mm',
    siliconeRound: '100 mm',
    matPliesALift: '4',
  },
  { bevel: ['8', '12'] },
)

const factors = assumed(
  {
    refitFactor: '1.35',
    reachFree: '1',
    reachHatch: '1.5',
    reachLiner: '3',
    reachBonded: '5',
    oldPaintDiscs: '3',
  },
  { refitFactor: ['1.2', '1.5'] },
)

export const limits: Row<LimitFields> = row(
  film,
  yachtGuides,
  wetTest,
  weather,
  buying,
  rollerLoss,
  brushLoss,
  losses,
  grit,
  sanded,
  knifeLoss,
  coating,
  logged,
  tape,
  handling,
  sunTest,
  fillers,
  gelcoat,
  wood,
  repairs,
  factors,
)
