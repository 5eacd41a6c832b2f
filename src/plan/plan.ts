/**
 * The road a job travels, as a table of contents. A plan is a function of its inputs alone: the same work, money,
 * log, weather, catalogue, moment and seed give the same plan. Each stage sees only what stands before it.
 */
import type { Catalogue } from '#catalogue'
import type { HourlySeries } from '#core/climate'
import type { Log, MoneyTerms, Work } from '#job'
import { airs } from './air-at.ts'
import { bonds } from './bonds/bonds.ts'
import { buildUps } from './build-ups.ts'
import { calendar, dateOf } from './calendar.ts'
import { cautions } from './cautions.ts'
import { colours } from './colours.ts'
import { judgeConditions } from './conditions.ts'
import { days, daysGrid } from './days.ts'
import { deck } from './deck-shapes.ts'
import { taped } from './girths.ts'
import { grounds } from './grounds.ts'
import { hazards } from './hazards.ts'
import { behindHorizon } from './horizon/behind-horizon.ts'
import { datedWeather } from './horizon/dated-weather.ts'
import { daysBehind } from './horizon/days-behind.ts'
import { withLostPaint } from './lost-paint.ts'
import { marks, struck } from './marks.ts'
import { mended } from './mended.ts'
import { money } from './money.ts'
import { gatherNotes } from './notes.ts'
import { pours } from './pours/pours.ts'
import { runs } from './pours/runs.ts'
import { quantities } from './quantities.ts'
import { readCatalogue } from './read-catalogue.ts'
import { createMemory, type Runner, type TraceEntry } from './remember.ts'
import { repairs } from './repairs.ts'
import { printThroughNotes } from './skins/print-through.ts'
import { knownAirOf } from './skins/shelter-air.ts'
import { hashParts, stampOf } from './stamp.ts'
import { standing } from './standing.ts'
import { steps } from './steps.ts'
import { stores } from './stores/stores.ts'
import { hull, surfaces, withHull } from './surfaces.ts'
import { toldReadings, weatherAsTold } from './told-weather.ts'
import type { Plan, Stamp } from './types.ts'

export type PlanInput = {
  readonly work: Work
  /** Absent for somebody who may not see it, and where nobody has reckoned yet: the plan runs without. */
  readonly money?: MoneyTerms
  readonly log: Log
  readonly weather?: HourlySeries
  /** A typical year, for the hours that the weather does not reach. */
  readonly typical?: HourlySeries
  /** What a logger read that hung where the boat stands, over hours that the weather has too. */
  readonly logger?: HourlySeries
  readonly catalogue: Catalogue
  readonly nowMs: number
  readonly seed: number
  /** Version of the program, for the stamp. */
  readonly app: string
}

export type Planned = {
  readonly plan: Plan
  /** Which stages ran and which had nothing to do. */
  readonly trace: readonly TraceEntry[]
}

/** Remembers the last plan of one job, so that an edit runs only the stages it reaches. */
export type Planner = { readonly plan: (input: PlanInput) => Planned }

/** A planner with an empty memory; the first plan runs every stage. */
export function createPlanner(): Planner {
  const memory = createMemory()
  return {
    plan: (input) => {
      const { run, trace } = memory.begin()
      return { plan: alongTheRoad(run, input), trace }
    },
  }
}

/** One plan, nothing remembered. */
export const plan = (input: PlanInput): Plan => createPlanner().plan(input).plan

/** The first day on which the plan may work. */
export const firstDate = ({ work: { job, place }, nowMs }: PlanInput): string =>
  laterOf(job.start, dateOf(nowMs, place.timeZone))

function alongTheRoad(run: Runner, input: PlanInput): Plan {
  const { work, log, catalogue } = input
  const { job, boat, place, people, shifts, closures } = work
  const fromDate = firstDate(input)
  // To the quarter hour, or every minute that passes would set the days anew.
  const nowMinute = Math.ceil(input.nowMs / 900_000) * 15
  const atHand = datedWeather(run, { weather: input.weather, typical: input.typical, place, fromDate })
  const weather = weatherAsTold(run, { weather: atHand.series, log })

  const known = run(readCatalogue, { catalogue })
  const measured = run(hull, { boat, stations: work.stations, points: work.points })
  const tape = run(taped, { hull: measured.hull, girths: work.girths })
  const onDeck = run(deck, {
    zones: work.zones,
    corners: work.corners,
    offsets: work.offsets,
    hull: measured,
  })
  const lines = run(struck, { marks: work.marks, hull: measured })
  const coloured = run(colours, {
    hull: measured,
    rake: boat.transomRake,
    zones: work.zones,
    struck: lines,
  })
  const surface = run(surfaces, {
    hull: measured,
    colours: coloured,
    taped: tape,
    deck: onDeck,
    zones: work.zones,
  })
  const mark = run(marks, { struck: lines, zones: work.zones, deck: onDeck, hull: measured })
  const stands = run(standing, { stance: work.stance, levels: work.levels, stripes: lines.stripes })
  const repair = run(repairs, { findings: work.findings, fittings: work.fittings, known })
  const buildUp = run(buildUps, {
    layers: work.layers,
    sheets: work.sheets,
    windows: work.windows,
    thinners: work.thinners,
    grounds: run(grounds, { findings: work.findings, zones: work.zones }),
    vocRules: work.place.vocRules ?? 'none',
    surfaces: surface,
    marks: mark,
    known,
  })
  const bond = run(bonds, {
    zones: work.zones,
    surfaces: surface,
    marks: mark,
    repairs: repair,
    buildUps: buildUp,
    known,
  })
  const planned = run(quantities, { buildUps: buildUp, repairs: repair })
  const hazard = run(hazards, {
    buildUps: buildUp,
    surfaces: surface,
    repairs: repair,
    boat,
    place,
    people,
    fromDate,
    catalogue,
  })
  const drawnUp = run(steps, {
    surfaces: surface,
    marks: mark,
    repairs: repair,
    buildUps: buildUp,
    hazards: hazard,
    rates: known.rates,
    people,
    shifts,
    boat,
    shelter: place.shelter,
  })
  const {
    steps: step,
    done,
    lost,
  } = run(mended, { steps: drawnUp, log, buildUps: buildUp, hazards: hazard, rates: known.rates })
  const quantity = run(withLostPaint, { quantities: planned, lost })
  const knownAir = knownAirOf(run, input)
  const asked = {
    place,
    knownAir,
    shed: work.shed,
    boat,
    hull: measured,
    zones: work.zones,
    buildUps: buildUp,
    surfaces: surface,
    marks: mark,
    repairs: repair,
  }
  const judged = judgeConditions(run, {
    ...asked,
    weather,
    typicalYear: atHand.alone === true,
    readings: run(toldReadings, { log }),
  })
  const condition = behindHorizon(run, {
    conditions: judged,
    asked,
    year: atHand.year,
    horizon: atHand.horizon,
  })
  const heat = printThroughNotes(run, {
    weather,
    place,
    boat,
    buildUps: buildUp,
    surfaces: surface,
    marks: mark,
  })
  const dates = run(calendar, { place, people, shifts, closures, rates: known.rates, fromDate })
  const airOf = run(airs, { conditions: condition })
  const grid = daysGrid(run, { calendar: dates, conditions: condition, nowMinute })
  const day = run(days, {
    grid,
    steps: step,
    airOf,
    calendar: dates,
    buildUps: buildUp,
    surfaces: surface,
    marks: mark,
    done,
    launch: job.launch,
    nowMinute,
  })
  const behind = condition.horizon && run(daysBehind, { conditions: condition, steps: step, days: day })
  const pour = run(pours, {
    steps: step,
    days: day,
    buildUps: buildUp,
    quantities: quantity,
    place: work.place,
    air: condition.air,
    runs: run(runs, { zones: work.zones, surfaces: surface, marks: mark, colours: coloured, deck: onDeck }),
    airOf,
    known,
  })
  const store = run(stores, {
    quantities: quantity,
    buildUps: buildUp,
    packs: work.packs,
    prices: input.money?.prices,
    steps: step,
    marks: mark,
    pours: pour,
    days: day,
    known,
  })
  const estimate =
    input.money &&
    run(money, {
      money: input.money,
      changes: work.changes,
      people,
      packs: work.packs,
      steps: step,
      days: day,
      stores: store,
      calendar: dates,
    })
  const caution = run(cautions, {
    hazards: hazard,
    steps: step,
    days: day,
    buildUps: buildUp,
    airOf,
  })
  const notes = gatherNotes(run, {
    surface,
    mark,
    stands,
    repair,
    buildUp,
    bond,
    quantity,
    hazard,
    step,
    condition,
    horizon: atHand,
    heat,
    dates,
    day,
    behind,
    pour,
    store,
    money: estimate,
  })

  return {
    stamp: stampFor(run, input),
    surfaces: run(withHull, { surfaces: surface, deck: onDeck, hull: measured }),
    marks: mark,
    standing: stands,
    repairs: repair,
    buildUps: buildUp,
    bonds: bond,
    quantities: quantity,
    hazards: hazard,
    steps: step,
    conditions: condition,
    days: day,
    pours: pour,
    stores: store,
    ...(estimate ? { money: estimate } : {}),
    cautions: caution,
    notes,
  }
}

const laterOf = (a: string, b: string): string => (a > b ? a : b)

/** The weather and what a logger read: both are rows of hours. */
const readHours = ({ weather, logger }: PlanInput) => ({ series: weather, ...(logger ? { logger } : {}) })

function stampFor(run: Runner, input: PlanInput): Stamp {
  return stampOf(input, {
    work: hashParts(run, 'work', input.work),
    log: hashParts(run, 'log', { log: input.log }),
    catalogue: hashParts(run, 'catalogue', input.catalogue),
    ...(input.money ? { money: hashParts(run, 'money', input.money) } : {}),
    ...(input.weather ? { weather: hashParts(run, 'weather', readHours(input)) } : {}),
    ...(input.typical ? { typical: hashParts(run, 'typical', { series: input.typical }) } : {}),
  })
}
