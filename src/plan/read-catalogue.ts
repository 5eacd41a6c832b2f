/** Reads the catalogue's cells into numbers, once: the one place where its ids meet what the stages reckon with. */
import { type Catalogue, type ConsumableId, catalogueFields, type RateId } from '#catalogue'
import type { ConsumableRate } from '#core/stores'
import { type Fields, type Figure, type Sheet, sheetFields } from '#job'
import { type AnyRow, cell, figureIn } from './catalogue-cell.ts'
import type { Known, Rates } from './known.ts'
import { bondBook, gritsIn } from './read-bonds.ts'
import type { Stage } from './remember.ts'
import type { GenericSheet } from './sheets/resolve-sheet.ts'
import type { Seen, Sure, VocLimit } from './types.ts'

export const readCatalogue: Stage<{ readonly catalogue: Catalogue }, Known> = {
  name: 'catalogue',
  run: ({ catalogue }) => ({
    rates: ratesOf(catalogue),
    sheets: new Map(Object.entries(catalogue.sheets).map(([id, row]) => [id, genericSheet(id, row)])),
    bonds: bondBook(catalogue),
    grits: gritsIn(catalogue),
    gritStep: limit(catalogue, 'gritStep'),
    gritOverFilm: limit(catalogue, 'gritOverFilm'),
    usualGrits: usualGritsIn(catalogue),
    lossByMethod: lossesOf(catalogue),
    textures: { grit: limit(catalogue, 'textureGrit'), moulded: limit(catalogue, 'textureMoulded') },
    sandedByRole: sandedOf(catalogue),
    vocLimits: vocLimitsIn(catalogue),
    mixLeadMinutes: times(limit(catalogue, 'mixLead'), 60),
    fillerLeadMinutes: times(limit(catalogue, 'fillerLead'), 60),
    puttyCupM3: limit(catalogue, 'puttyCup'),
    fillerCupM3: limit(catalogue, 'fillerCup'),
    fillerPotShare: limit(catalogue, 'fillerPotShare'),
    runAloneMostM2: limit(catalogue, 'runOneMost'),
    trayPourM3: seenLimit(catalogue, 'trayPour'),
    wetEdgeMinutes: times(limit(catalogue, 'wetEdge'), 60),
    stirAgainMinutes: times(limit(catalogue, 'stirAgain'), 60),
    wetFloorMarginK: limit(catalogue, 'wetFloorMargin'),
    wetFloorHumidity: limit(catalogue, 'wetFloorHumidity'),
    sectionM: limit(catalogue, 'section'),
    sectionAloneM: limit(catalogue, 'sectionOne'),
    tipOverlapM: limit(catalogue, 'tipOverlap'),
    reserveByRole: reservesOf(catalogue),
    touchUpM3: limit(catalogue, 'touchUp'),
    hardenerOpenHours: limit(catalogue, 'hardenerOpen'),
    consumableRates: consumableRates(catalogue),
    consumableUnits: Object.fromEntries(
      Object.entries(catalogue.consumables).map(([id, row]) => [
        id,
        row.cells.soldBy as 'piece' | 'pair' | 'm' | 'L',
      ]),
    ),
    consumablesByKind,
    consumablesByMethod,
    consumablesByPersonDay: usedEach(catalogue, 'person-day'),
    consumablesByPour: usedEach(catalogue, 'pour'),
  }),
}

/** What each kind of step wears down; `disc` is the disc of its grit. A coat takes what its tool asks for besides. */
const consumablesByKind: Known['consumablesByKind'] = {
  wash: ['wiping-solvent', 'wipe'],
  sand: ['disc'],
  'sand-between': ['disc'],
  mend: ['disc'],
  coat: ['tack-cloth', 'wiping-solvent', 'wipe'],
  mask: ['fine-line-tape', 'masking-tape', 'masking-paper'],
  strike: ['fine-line-tape', 'masking-tape', 'masking-paper'],
}

const consumablesByMethod: Known['consumablesByMethod'] = {
  'roll and tip': ['foam-cover', 'tray-liner', 'tip-brush'],
  roller: ['foam-cover', 'tray-liner'],
  brush: ['tip-brush'],
}

const numberIn = (fields: Fields, row: AnyRow, key: string): number => {
  const value = figureIn(fields, row, key)
  if (value === undefined) throw new Error(`catalogue: cell missing, got none, expected ${key}`)
  return value
}

function limit(catalogue: Catalogue, key: keyof typeof catalogueFields.limits): Sure<number> {
  const row: AnyRow = catalogue.limits
  return {
    value: numberIn(catalogueFields.limits, row, key),
    certainty: row.sources[key]?.certainty ?? 'assumed',
  }
}

function rate(catalogue: Catalogue, id: RateId): Sure<number> {
  const row: AnyRow = catalogue.rates[id]
  return {
    value: numberIn(catalogueFields.rates, row, 'time'),
    certainty: row.sources.time?.certainty ?? 'assumed',
  }
}

const times = (figure: Sure<number>, factor: number): Sure<number> => ({
  ...figure,
  value: figure.value * factor,
})

function ratesOf(catalogue: Catalogue): Rates {
  const hours = (id: RateId) => rate(catalogue, id)
  return {
    surveyHours: hours('survey'),
    referenceHours: hours('record-marks'),
    fuelHours: hours('map-fuel'),
    guardHoursEach: hours('photograph-and-bag'),
    washHoursPerM2: hours('wash-dewax'),
    sandHoursPerM2: {
      80: hours('sand-80'),
      120: hours('sand-120'),
      220: hours('sand-220'),
      320: hours('sand-320'),
      400: hours('sand-400'),
    },
    fillHoursPerM2: hours('skim-filler'),
    pinholeHoursPerM2: hours('pinhole-round'),
    maskHoursPerM: hours('mask-line'),
    tapeOffHoursPerM: hours('tape-off'),
    strikeHoursPerM: hours('strike-line'),
    layOutHoursPerM: hours('lay-out-panels'),
    tipAloneM2PerH: limit(catalogue, 'paceOne'),
    tipPairM2PerH: limit(catalogue, 'paceTwo'),
    rollHoursPerM2: hours('roll-primer'),
    brushHoursPerM2: hours('brush-coat'),
    coatSetUpHours: hours('coat-set-up'),
    coatCleanUpHours: hours('coat-clean-up'),
    settleHours: hours('settle-dust'),
    clearUpHours: hours('clean-shop'),
    fittingHours: hours('strip-small-fitting'),
    refitFactor: limit(catalogue, 'refitFactor'),
    reachFactors: {
      free: limit(catalogue, 'reachFree').value,
      'through a hatch': limit(catalogue, 'reachHatch').value,
      'behind a liner': limit(catalogue, 'reachLiner').value,
      'bonded in': limit(catalogue, 'reachBonded').value,
    },
    snagHours: hours('snag-round'),
    handoverHours: hours('handover'),
    sessionOpenHours: hours('session-open'),
    sessionCloseHours: hours('session-close'),
  }
}

function genericSheet(id: string, row: AnyRow): GenericSheet {
  const cells = Object.keys(row.cells).flatMap((key) => {
    const value = cell(sheetFields, row, key)
    return value === undefined ? [] : [[key, value] as const]
  })
  const certainty = Object.fromEntries(
    Object.entries(row.sources).map(([key, origin]) => [key, origin?.certainty ?? 'assumed']),
  )
  return { sheet: { id, ...Object.fromEntries(cells) } as Sheet, certainty, seen: seenIn(sheetFields, row) }
}

/** The ranges that the sources of a row show, of its quantities. */
function seenIn(fields: Fields, row: AnyRow): Readonly<Record<string, readonly [number, number]>> {
  const ranges = Object.entries(row.sources).flatMap(([key, origin]) => {
    if (fields[key]?.kind !== 'quantity' || !origin?.seen) return []
    const [least, most] = origin.seen.map((text) => figureIn(fields, { ...row, cells: { [key]: text } }, key))
    return least === undefined || most === undefined ? [] : [[key, [least, most]] as const]
  })
  return Object.fromEntries(ranges)
}

/** With the range that its source shows. */
function seenLimit(catalogue: Catalogue, key: keyof typeof catalogueFields.limits): Seen {
  const seen = seenIn(catalogueFields.limits, catalogue.limits)[key]
  return { ...limit(catalogue, key), ...(seen ? { seen } : {}) }
}

function lossesOf(catalogue: Catalogue): Known['lossByMethod'] {
  const roller = seenLimit(catalogue, 'lossRoller')
  return {
    'roll and tip': roller,
    roller,
    brush: seenLimit(catalogue, 'lossBrush'),
    'filler knife': limit(catalogue, 'lossKnife'),
  }
}

const usualGritsIn = ({ gritLadder }: Catalogue): Known['usualGrits'] => {
  const grit = (purpose: keyof typeof gritLadder) => gritLadder[purpose].cells.grit ?? ''
  return {
    fillerCut: grit('long-board'),
    patternOff: grit('grind-non-skid'),
    underDark: grit('before-dark-finish'),
  }
}

function sandedOf(catalogue: Catalogue): Known['sandedByRole'] {
  const primer = limit(catalogue, 'sandedPrimer')
  return {
    primer,
    'tie coat': primer,
    filler: primer,
    fairing: primer,
    finish: limit(catalogue, 'sandedFinish'),
  }
}

const vocLimitsIn = (catalogue: Catalogue): readonly VocLimit[] =>
  Object.values(catalogue.vocLimits).map((row) => ({
    rules: row.cells.rules ?? '',
    what: row.cells.what ?? '',
    limit: numberIn(catalogueFields.vocLimits, row, 'limit'),
    source: row.source,
  }))

function reservesOf(catalogue: Catalogue): Known['reserveByRole'] {
  const finish = limit(catalogue, 'reserveFinish')
  const primer = limit(catalogue, 'reservePrimer')
  const filler = limit(catalogue, 'reserveFiller')
  return {
    finish,
    'non-skid': finish,
    primer,
    'tie coat': primer,
    filler,
    fairing: filler,
    'laminating resin': filler,
  }
}

function usedEach(catalogue: Catalogue, each: string): readonly string[] {
  return Object.entries(catalogue.consumables).flatMap(([id, row]) => (row.cells.each === each ? [id] : []))
}

function consumableRates(catalogue: Catalogue): readonly ConsumableRate[] {
  return (Object.keys(catalogue.consumables) as ConsumableId[]).map((id) =>
    consumableRate(id, catalogue.consumables[id]),
  )
}

/** So much per square metre, per metre of edge, per person-day or per pour, in the unit it is sold by. */
function consumableRate(id: string, row: AnyRow): ConsumableRate {
  const figure = (key: string): number | undefined =>
    (cell(catalogueFields.consumables, row, key) as Figure | undefined)?.value
  const litres = figure('volume')
  const amount =
    figure('pieces') ?? (litres === undefined ? undefined : litres * 1000) ?? figure('length') ?? 0
  const area = figure('area')
  const run = figure('run')
  const driver =
    area !== undefined
      ? 'areaM2'
      : run !== undefined
        ? 'lengthM'
        : row.cells.each === 'pour'
          ? 'count'
          : 'personDays'
  const fresh = row.cells.fresh === 'yes' && area !== undefined
  return { id, driver, perDriver: amount / (area ?? run ?? 1), unitsPerPiece: 1, ...(fresh ? { fresh } : {}) }
}
