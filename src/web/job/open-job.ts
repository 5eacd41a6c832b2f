/**
 * One job that stands open: its documents and log on this device and shared with others, and the worker that plans
 * it. Everything a screen sees is one frozen view, made anew when something has changed.
 */
import { type Doc, encodeStateAsUpdate as encode, UndoManager } from 'yjs'
import type { RawCells, RawDocument } from '#job'
import { createUndo, moneyDocument, partOf, type Undo, versionOf, workDocument } from '#replica'
import { createWords } from '#words'
import type { Sync } from '../device/connection.ts'
import type { Device } from '../device/device.ts'
import { type DeviceDocument, openDeviceDocument } from '../device/device-document.ts'
import { createListeners } from '../device/listeners.ts'
import { openLogBox } from '../device/log-box.ts'
import { newId } from '../device/new-id.ts'
import { weatherBytes } from '../device/weather-box.ts'
import type { PlannedMessage, Reader, ShownPlan } from '../worker/messages.ts'
import { createPlanClient } from '../worker/plan-client.ts'
import { jobEdits } from './job-edits.ts'
import type { JobView } from './job-view.ts'
import { keptState } from './kept-state.ts'

export type OpenJob = {
  readonly listen: (listener: () => void) => () => void
  readonly view: () => JobView
  readonly close: () => void
}

export type OpenJobOptions = { readonly device: Device; readonly id: string; readonly worker: Worker }

/** Edits closer together than this are one step of undo. */
const joinMs = 400
const minuteMs = 60_000
const exchangeMs = 15_000

/** The documents are read from this device first; then the first plan is asked for. */
export async function openJob({ device, id, worker }: OpenJobOptions): Promise<OpenJob> {
  const { db, connection } = device
  const listeners = createListeners()
  const work = openDeviceDocument(db, workDocument(id))
  const money = openDeviceDocument(db, moneyDocument(id))
  const log = openLogBox(db, id)
  await Promise.all([work.loaded, money.loaded, log.loaded])
  const changeFact = `changes ${id}`
  const origin = Symbol('this page')

  const state = {
    change: Number((await db.get('facts', changeFact)) ?? 0),
    changedAtMs: undefined as number | undefined,
    raw: rawOf(work, money, log.entries()),
    message: undefined as PlannedMessage | undefined,
    plan: undefined as ShownPlan | undefined,
    before: undefined as ShownPlan | undefined,
    fault: undefined as JobView['fault'],
    reader: readerOf(work.doc),
    words: createWords(readerOf(work.doc)),
    nowMs: Date.now(),
    wanted: undefined as string | undefined,
  }

  const client = createPlanClient({
    worker,
    planned: (message) => {
      state.before = state.plan
      state.plan = nextPlan(state.plan, message)
      state.message = message
      state.fault = message.weatherFault as JobView['fault']
      if (!sameReader(state.reader, message.reader)) {
        state.reader = message.reader
        state.words = createWords(message.reader)
      }
      if (message.wantsWeather !== undefined) void fetchWeather(message.wantsWeather)
      refresh()
    },
    failed: ({ code, data }) => {
      state.fault = { code, data }
      refresh()
    },
  })
  const askPlan = (): void => client.plan(state.nowMs)
  const fetchWeather = async (hash: string): Promise<void> => {
    if (state.wanted === hash) return
    state.wanted = hash
    const bytes = await weatherBytes(db, hash).catch(() => undefined)
    if (bytes) {
      client.send({ kind: 'weather', hash, bytes })
      if (state.message) askPlan()
    } else state.wanted = undefined
  }
  const sendEntries = (): void =>
    client.send({
      kind: 'entries',
      entries: Object.fromEntries(log.entries().map(({ id: key, cells }) => [key, cells])),
    })

  const undo: Undo = createUndo([work.doc, money.doc], { origin, joinMs, changed: () => refresh() })
  const edits = jobEdits({ work: work.doc, money: money.doc }, { origin, newId, cut: undo.cut })
  const ended: (() => void)[] = []

  for (const [part, { doc }] of [['work', work] as const, ['money', money] as const]) {
    client.send({ kind: 'update', part, update: encode(doc) })
    doc.on('update', (update: Uint8Array, from: unknown) => {
      client.send({ kind: 'update', part, update })
      if (from === origin || isUndo(from)) {
        state.change += 1
        state.changedAtMs = Date.now()
        void db.put('facts', state.change, changeFact).catch(() => undefined)
        device.askToLast()
      }
      askPlan()
      refresh()
    })
  }
  sendEntries()
  // A plan without its weather would show other days and sums for a moment.
  await Promise.race([firstWeather(state.raw, fetchWeather), patience(firstWeatherMs)])
  askPlan()

  const syncs: Sync[] = [connection.share(work.name, work.doc)]
  if (device.sees() === 'all') syncs.push(connection.share(money.name, money.doc))

  let seen: JobView | undefined
  const refresh = (): void => {
    seen = undefined
    listeners.tell()
  }
  let known = log.entries()
  ended.push(
    log.listen(() => {
      if (known.length !== log.entries().length) {
        sendEntries()
        askPlan()
      }
      known = log.entries()
      refresh()
    }),
    work.listen(refresh),
    money.listen(refresh),
    device.listen(refresh),
    connection.listen(() => {
      if (connection.online()) void log.exchange()
    }),
    ...syncs.map((sync) => sync.listen(refresh)),
  )
  void log.exchange()
  const tick = setInterval(() => {
    const before = state.nowMs
    state.nowMs = Date.now()
    if (Math.floor(before / (15 * minuteMs)) !== Math.floor(state.nowMs / (15 * minuteMs))) askPlan()
    refresh()
  }, minuteMs / 2)
  const exchange = setInterval(() => {
    if (connection.online() && document.visibilityState === 'visible') void log.exchange()
    const wants = state.message?.wantsWeather
    if (wants !== undefined && connection.online()) void fetchWeather(wants)
  }, exchangeMs)

  const makeView = (): JobView => {
    state.raw = rawOf(work, money, log.entries())
    const { message, plan, before, fault } = state
    return {
      id,
      raw: state.raw,
      ...(plan ? { plan } : {}),
      ...(before ? { before } : {}),
      trace: message?.trace ?? [],
      planning: client.planning(),
      ...(fault ? { fault } : {}),
      problems: message?.problems ?? [],
      complete: message?.complete ?? true,
      readOnly: message?.readOnly ?? false,
      sees: device.sees(),
      words: state.words,
      ...state.reader,
      nowMs: state.nowMs,
      log: log.entries(),
      addEntry: (cells: RawCells) => {
        const entry = newId()
        log.add({ id: entry, cells })
        device.askToLast()
        return entry
      },
      edits,
      history: { canUndo: undo.canUndo(), canRedo: undo.canRedo(), undo: undo.undo, redo: undo.redo },
      change: {
        number: state.change,
        ...(state.changedAtMs === undefined ? {} : { atMs: state.changedAtMs }),
      },
      kept: keptState({ documents: [work, money], log, syncs, device }),
      ask: client.ask,
    }
  }
  return {
    listen: listeners.listen,
    view: () => {
      seen ??= makeView()
      return seen
    },
    close: () => {
      clearInterval(tick)
      clearInterval(exchange)
      for (const end of ended) end()
      for (const sync of syncs) sync.close()
      undo.destroy()
      client.close()
      work.close()
      money.close()
    },
  }
}

const firstWeatherMs = 2000

function firstWeather(raw: RawDocument, fetchWeather: (hash: string) => Promise<void>): Promise<void> {
  const hash = raw.work.weather?.hash
  return typeof hash === 'string' ? fetchWeather(hash) : Promise.resolve()
}

const patience = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

const isUndo = (origin: unknown): boolean => origin instanceof UndoManager

function rawOf(work: DeviceDocument, money: DeviceDocument, entries: JobView['log']): RawDocument {
  const prices = partOf(money.doc)
  return {
    hardstand: versionOf(work.doc),
    work: partOf(work.doc),
    ...(Object.keys(prices).length > 0 ? { money: prices } : {}),
    log: Object.fromEntries(entries.map(({ id, cells }) => [id, cells])),
  }
}

/** Before the first plan, as far as the document says. */
function readerOf(doc: Doc): Reader {
  const { job = {}, place = {} } = partOf(doc)
  const text = (cell: unknown, otherwise: string): string =>
    typeof cell === 'string' && cell !== '' ? cell : otherwise
  return {
    locale: 'en-GB',
    system: job.units === 'us' ? 'us' : 'metric',
    timeZone: text(place.timeZone, 'UTC'),
  }
}

const sameReader = (a: Reader, b: Reader): boolean =>
  a.locale === b.locale && a.system === b.system && a.timeZone === b.timeZone && a.currency === b.currency

function nextPlan(plan: ShownPlan | undefined, { stages, gone }: PlannedMessage): ShownPlan {
  const next = { ...plan, ...stages } as Record<string, unknown>
  for (const name of gone) delete next[name]
  return next as unknown as ShownPlan
}
