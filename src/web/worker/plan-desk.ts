/**
 * Holds one job for planning: its own copies of the shared documents, its log and weather, and what the last plan
 * left in memory, so that an edit reads and plans only what it reaches.
 */
import * as Y from 'yjs'
import { catalogue, catalogueIds } from '#catalogue'
import { type HourlySeries, readWeatherCsv, seriesHash } from '#intake'
import { type Projected, project, type RawDocument } from '#job'
import {
  createPlanner,
  hourMaker,
  judgedFromM,
  type Plan,
  type PlanInput,
  solidOf,
  suggestBuildUps,
  tellWay,
  type WeatherAtHand,
  weatherAtHand,
} from '#plan'
import { partOf, versionOf } from '#replica'
import {
  type Answers,
  type Entries,
  mostWeathersHeld,
  type PlannedMessage,
  type Question,
} from './messages.ts'
import { patchOf } from './patch.ts'
import { type Shown, showPlan } from './shown-plan.ts'
import { candidatesOf, effectOf, withCell } from './weigh.ts'

export type PlanDesk = {
  readonly update: (part: 'work' | 'money', update: Uint8Array) => void
  readonly setEntries: (entries: Entries) => void
  readonly setWeather: (hash: string, bytes: Uint8Array) => void
  readonly plan: (turn: { readonly turn: number; readonly nowMs: number }) => PlannedMessage
  /** Some answers need code that comes when they are first asked for. */
  readonly answer: (question: Question) => Answer | Promise<Answer>
}

type Answer = Answers[keyof Answers]

export type DeskOptions = { readonly app: string; readonly seed: number; readonly clockMs: () => number }

type Weather =
  | { readonly hash: string; readonly series: HourlySeries }
  | { readonly hash: string; readonly fault: NonNullable<PlannedMessage['weatherFault']> }

/** A desk for one job; it lives as long as the worker. */
export function createPlanDesk({ app, seed, clockMs }: DeskOptions): PlanDesk {
  const docs = { work: new Y.Doc(), money: new Y.Doc() }
  const planner = createPlanner()
  // A memory of its own, so that what is only tried does not push out what is.
  const weigher = createPlanner()
  let entries: Entries = {}
  const weathers = new Map<string, Weather>()
  let projected: Projected | undefined
  let last: Shown | undefined
  let lastNowMs = 0
  let maker: { readonly of: Plan['conditions']; readonly make: ReturnType<typeof hourMaker> } | undefined
  let atHand: { readonly of: Plan['conditions']; readonly weather: WeatherAtHand | undefined } | undefined

  const read = (): Projected => {
    projected = project(rawDocument(docs, entries), {
      ...readOptions,
      ...(projected ? { previous: projected } : {}),
    })
    return projected
  }
  const inputOf = ({ work, money, log }: Projected, nowMs: number): PlanInput => {
    const seriesOf = (hash: string | undefined) => {
      const held = hash === undefined ? undefined : weathers.get(hash)
      return held && 'series' in held ? held.series : undefined
    }
    const series = seriesOf(work.weather.hash)
    const typical = seriesOf(work.weather.typicalHash)
    const logger = seriesOf(work.weather.loggerHash)
    return {
      work,
      ...(money ? { money } : {}),
      log,
      ...(series ? { weather: series } : {}),
      ...(typical ? { typical } : {}),
      ...(logger ? { logger } : {}),
      catalogue,
      nowMs,
      seed,
      app,
    }
  }
  return {
    update: (part, update) => Y.applyUpdate(docs[part], update),
    setEntries: (given) => {
      entries = given
    },
    setWeather: (hash, bytes) => {
      weathers.set(hash, readWeather(hash, bytes))
      for (const old of [...weathers.keys()].slice(0, -mostWeathersHeld)) weathers.delete(old)
    },
    plan: ({ turn, nowMs }) => {
      const from = clockMs()
      const now = read()
      const input = inputOf(now, nowMs)
      const planned = planner.plan(input)
      const before = last
      last = showPlan(planned.plan, before)
      lastNowMs = nowMs
      const { hash, typicalHash, loggerHash } = now.work.weather
      const named = [hash, typicalHash, loggerHash].filter((one) => one !== undefined)
      const wanted = named.find((one) => !weathers.has(one))
      const faulty = named.map((one) => weathers.get(one)).find((one) => one && 'fault' in one)
      return {
        kind: 'planned',
        turn,
        patch: patchOf(before?.shown, last.shown)!,
        problems: now.problems,
        complete: now.complete,
        readOnly: now.readOnly,
        reader: readerOf(now),
        trace: planned.trace,
        ...(wanted === undefined ? {} : { wantsWeather: wanted }),
        ...(faulty && 'fault' in faulty ? { weatherFault: faulty.fault } : {}),
        tookMs: clockMs() - from,
      }
    },
    answer: (question) => {
      if (!last || !projected) throw new Error('desk: no plan yet, got a question, expected a plan first')
      switch (question.kind) {
        case 'candidates':
          return candidatesOf(projected, last.plan)
        case 'weigh': {
          const { candidate, nowMs } = question
          const raw = rawDocument(docs, entries)
          const tried = (text: string): Plan => {
            const supposed = project(withCell(raw, candidate.place, text), {
              ...readOptions,
              previous: projected!,
            })
            return weigher.plan(inputOf(supposed, nowMs)).plan
          }
          return effectOf(tried(candidate.low), tried(candidate.high))
        }
        case 'whole':
          return {
            plan: last.plan,
            work: projected.work,
            judgedFromM: judgedFromM(projected.work.job.finish),
          }
        case 'why':
          return failingAt(last.plan, question)
        case 'make an hour': {
          if (maker?.of !== last.plan.conditions)
            maker = { of: last.plan.conditions, make: hourMaker(inputOf(projected, lastNowMs), last.plan) }
          return maker.make(question)
        }
        case 'figure': {
          const { work, money } = projected
          return tellWay({ plan: last.plan, work, catalogue, ...(money ? { money } : {}) }, question.figure)
        }
        case 'suggest': {
          const { work, money } = projected
          const wish = question.family === undefined ? {} : { family: question.family }
          return suggestBuildUps({ plan: last.plan, work, prices: money?.prices, catalogue, wish })
        }
        case 'solid':
          return solidOf(last.plan, projected.work)
        case 'weather':
          // Several parts of a screen ask at once, and the skins of a year take a while.
          if (atHand?.of !== last.plan.conditions)
            atHand = { of: last.plan.conditions, weather: weatherAtHand(inputOf(projected, lastNowMs)) }
          return atHand.weather
        case 'what if': {
          const supposed = project(rawDocument(docs, { ...entries, ...question.entries }), readOptions)
          return createPlanner().plan(inputOf(supposed, question.nowMs)).plan
        }
      }
    },
  }
}

const readOptions = {
  strict: false,
  catalogueIds: catalogueIds.sheets,
  consumableIds: catalogueIds.priced,
} as const

/** A person who may not see money has an empty money document. */
const rawDocument = (docs: Readonly<Record<'work' | 'money', Y.Doc>>, log: Entries): RawDocument => {
  const money = partOf(docs.money)
  return {
    hardstand: versionOf(docs.work),
    work: partOf(docs.work),
    ...(Object.keys(money).length > 0 ? { money } : {}),
    log,
  }
}

const readerOf = ({ work, money }: Projected): PlannedMessage['reader'] => ({
  locale: work.job.locale ?? 'en-GB',
  system: work.job.units ?? 'metric',
  timeZone: work.place.timeZone,
  ...(money ? { currency: money.terms.currency } : {}),
})

/** Weather that is not what its hash says is not planned with. */
function readWeather(hash: string, bytes: Uint8Array): Weather {
  const result = readWeatherCsv(bytes)
  if (!result.ok) {
    const { code = 'web.weatherOther', data = {} } = result.problems[0] ?? {}
    return { hash, fault: { code, data } }
  }
  const found = seriesHash(result.series)
  return found === hash
    ? { hash, series: result.series }
    : { hash, fault: { code: 'web.weatherOther', data: { wanted: hash, found } } }
}

function failingAt({ conditions }: Plan, { key, minute }: { readonly key: string; readonly minute: number }) {
  const hours = conditions.zones.find((zone) => zone.key === key)
  return hours?.failing[Math.floor((minute - hours.firstMinute) / 60)] ?? []
}
