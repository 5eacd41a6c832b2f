/**
 * One job that stands open: its documents and log on this device and shared with others, and its planning. Everything
 * a screen sees is one view, made anew when something has changed.
 */
import { UndoManager } from 'yjs'
import type { RawDocument } from '#job'
import { createUndo, moneyDocument, partOf, versionOf, workDocument } from '#replica'
import { browserShelf } from '../device/browser-shelf.ts'
import { openClashBox } from '../device/clash-box.ts'
import type { Device } from '../device/device.ts'
import { type DeviceDocument, openDeviceDocument } from '../device/device-document.ts'
import { keepWeather } from '../device/keep-weather.ts'
import { createListeners, type Listeners } from '../device/listeners.ts'
import { type LogBox, openLogBox } from '../device/log-box.ts'
import { newId } from '../device/new-id.ts'
import { weatherBytes } from '../device/weather-box.ts'
import { openWeatherOffers } from '../device/weather-offers.ts'
import { openChanges } from './changes.ts'
import { jobEdits } from './job-edits.ts'
import { openPlanning } from './job-planning.ts'
import type { JobView } from './job-view.ts'
import { readMoves, writeMoves } from './kept-moves.ts'
import { keptState } from './kept-state.ts'
import { localInstant } from './local-date.ts'
import { createPlanMoves } from './plan-moves.ts'
import { settleClash } from './settle-clash.ts'
import { cellsWith, type WeatherCells, type WeatherKey, weatherKeys, weatherPlace } from './weather-cells.ts'
import { openWeighing } from './weighing.ts'

export type OpenJob = Pick<Listeners, 'listen'> & {
  readonly view: () => JobView
  readonly close: () => void
}

export type OpenJobOptions = { readonly device: Device; readonly id: string; readonly worker: Worker }

/** Edits closer together than this are one step of undo, ms. */
const joinMs = 400
const tickMs = 30_000
const exchangeMs = 15_000
/** A page that is only passed through has nothing weighed, ms. */
const restMs = 1500

/** Resolves when everything this device has of the job is read. */
export async function openJob({ device, id, worker }: OpenJobOptions): Promise<OpenJob> {
  const { db, connection } = device
  const listeners = createListeners()
  const work = openDeviceDocument(db, workDocument(id))
  const money = openDeviceDocument(db, moneyDocument(id))
  const log = openLogBox(db, id)
  const changes = openChanges(db, id)
  await Promise.all([work.loaded, money.loaded, log.loaded, changes.loaded])

  await device.outbox.hold(id)

  const docs = { work: work.doc, money: money.doc }
  const shelf = browserShelf()
  const clashes = openClashBox(shelf, id)
  clashes.watch('work', work.doc)
  clashes.watch('money', money.doc)
  const origin = Symbol('this page')
  let seen: JobView | undefined
  const refresh = (): void => {
    seen = undefined
    listeners.tell()
  }
  const undo = createUndo([work.doc, money.doc], { origin, joinMs, changed: refresh })
  const edits = jobEdits(docs, { origin, newId, cut: undo.cut })
  for (const doc of [work.doc, money.doc]) {
    doc.on('update', (_update: Uint8Array, from: unknown) => {
      if (from === origin || from instanceof UndoManager) {
        changes.count()
        device.askToLast()
      }
      refresh()
    })
  }

  const moves = createPlanMoves(readMoves(shelf, id, Date.now()), (list) => writeMoves(shelf, id, list))
  const planning = openPlanning({ db, worker, docs })
  planning.setEntries(entriesOf(log))
  // A person who may not see prices is never sent them.
  const shared = device.sees() === 'all' ? [work, money] : [work]
  const syncs = shared.map(({ name, doc }) => connection.share(name, doc))

  const weather = openWeatherOffers(db, 3)
  const offerWeather = (): void =>
    void weather.offer((['hash', 'typicalHash', 'loggerHash'] as const).map((key) => weatherCell(work, key)))
  work.doc.on('update', offerWeather)
  const exchangeAll = (): void => {
    void log.exchange()
    offerWeather()
    planning.retry()
  }
  const keptNow = () => keptState({ documents: [work, money], log, syncs, weather, device })
  /** What was edited here need not be sent again in another page. */
  const tellSent = (): void => {
    if (keptNow().where !== 'both') return
    for (const one of [log, ...(syncs.length > 1 ? [work, money] : [work])]) void one.sent()
  }
  const weighing = openWeighing({ ask: planning.ask, nowMs: () => planning.now().nowMs })
  let practice: ReturnType<typeof setTimeout> | undefined
  let known = log.entries().length
  const heard = [
    planning.listen(() => {
      if (planning.now().plan) practice ??= setTimeout(weighing.start, restMs)
      moves.see(planning.now().plan, { number: changes.last().number, atMs: Date.now() })
      refresh()
    }),
    log.listen(() => {
      if (known !== log.entries().length) planning.setEntries(entriesOf(log))
      known = log.entries().length
      refresh()
    }),
    connection.listen(() => {
      if (connection.online()) exchangeAll()
      else for (const one of [log, weather]) one.away()
    }),
    ...[work, money, log, weather, ...syncs].map((one) => one.listen(tellSent)),
    ...[work, money, device, weather, clashes, ...syncs].map((one) => one.listen(refresh)),
  ]
  exchangeAll()
  const tick = setInterval(() => planning.tick(Date.now()), tickMs)
  const exchange = setInterval(() => {
    if (connection.online() && document.visibilityState === 'visible') exchangeAll()
  }, exchangeMs)

  const setWeather = (cells: WeatherCells): void =>
    edits.together(({ set }) => {
      for (const key of weatherKeys) {
        const text = cells[key]
        if (text !== undefined) set(weatherPlace(key), text)
      }
    })

  const makeView = (): JobView => {
    const { message, reader, ...plan } = planning.now()
    return {
      id,
      raw: rawOf({ work, money, log }),
      ...plan,
      ...reader,
      moves: moves.list(),
      trace: message?.trace ?? [],
      planning: planning.planning(),
      problems: message?.problems ?? [],
      complete: message?.complete ?? true,
      readOnly: message?.readOnly ?? false,
      sees: device.sees(),
      log: log.entries(),
      addEntry: (cells) => {
        const entry = newId()
        log.add([{ id: entry, cells }])
        device.askToLast()
        return entry
      },
      addEntries: (all) => {
        log.add(all.map((cells) => ({ id: newId(), cells })))
        device.askToLast()
      },
      edits,
      history: { canUndo: undo.canUndo(), canRedo: undo.canRedo(), undo: undo.undo, redo: undo.redo },
      clashes: clashes.list(),
      settleClash: (clash, whose) => settleClash({ clashes, edits }, clash, whose),
      change: changes.last(),
      kept: { ...keptNow(), others: device.outbox.onlyHere().filter((job) => job !== id).length },
      offerAgain: () => {
        for (const one of [log, weather, ...syncs]) one.again()
      },
      weatherFile: async (key) => {
        const hash = weatherCell(work, key)
        return hash === undefined ? undefined : weatherBytes(db, hash).catch(() => undefined)
      },
      giveWeather: async ({ file, soleTypical, ...given }) => {
        await keepWeather(db, given)
        const { hash, typicalYear } = given
        const nowAt = localInstant(planning.now().nowMs, 'UTC')
        setWeather(cellsWith(weatherOf(work), { hash, file, typicalYear, nowAt, soleTypical }))
      },
      giveLogger: async ({ file, ...given }) => {
        await keepWeather(db, given)
        setWeather({ loggerHash: given.hash, logger: file })
      },
      dropTypical: () => setWeather({ typicalHash: '', typicalFile: '' }),
      weighing,
      ask: planning.ask,
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
      clearTimeout(practice)
      weighing.close()
      for (const stop of heard) stop()
      for (const sync of syncs) sync.close()
      clashes.close()
      undo.destroy()
      planning.close()
      log.close()
      work.close()
      money.close()
      device.outbox.release(id)
    },
  }
}

function weatherCell({ doc }: DeviceDocument, key: WeatherKey): string | undefined {
  const text = doc.getMap('weather').get(key)
  return typeof text === 'string' && text !== '' ? text : undefined
}

const weatherOf = (work: DeviceDocument): WeatherCells =>
  Object.fromEntries(
    weatherKeys.flatMap((key) => {
      const text = weatherCell(work, key)
      return text === undefined ? [] : [[key, text] as const]
    }),
  )

const entriesOf = (log: LogBox) => Object.fromEntries(log.entries().map(({ id, cells }) => [id, cells]))

type Kept = { readonly work: DeviceDocument; readonly money: DeviceDocument; readonly log: LogBox }

function rawOf({ work, money, log }: Kept): RawDocument {
  const prices = partOf(money.doc)
  return {
    hardstand: versionOf(work.doc),
    work: partOf(work.doc),
    ...(Object.keys(prices).length > 0 ? { money: prices } : {}),
    log: entriesOf(log),
  }
}
