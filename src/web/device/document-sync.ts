/**
 * A document shared over the socket. What the server will not take stops the sharing of that document alone: it stays
 * on this device, and is offered again when the person asks, when it has shrunk, or after a while where the fault was
 * the server's disk.
 */
import { HocuspocusProvider, type HocuspocusProviderWebsocket } from '@hocuspocus/provider'
import { applyUpdate, Doc, encodeStateAsUpdate } from 'yjs'
import { readSocketTold } from '#replica'
import { createListeners, type Listeners } from './listeners.ts'

/** Why the server does not take a document, as a code of the words with its data. */
export type NotTaken = {
  readonly code: string
  readonly data: Readonly<Record<string, string | number>>
}

export type Sync = Pick<Listeners, 'listen'> & {
  /** Edits that the server has not said it has; undefined before the first meeting, and while it takes none. */
  readonly waiting: () => number | undefined
  readonly notTaken: () => NotTaken | undefined
  /** Offers the document again, if the server did not take it. */
  readonly again: () => void
  readonly close: () => void
}

export type DocumentSync = Sync & {
  readonly stop: (why: NotTaken) => void
  /** Bytes in which the whole document is sent; 0 when it is not being shared. */
  readonly bytes: () => number
}

/** What the server says, as what it means to a person whose edits are kept here. */
const meanings: Readonly<Record<string, string>> = {
  'server.documentFull': 'web.serverJobFull',
  'server.documentsFull': 'web.serverFull',
  'server.storeFailed': 'web.serverDiskFault',
}

/** A disk may have room again by itself. */
const passing = 'web.serverDiskFault'
const passingMs = 30_000
/** How long edits are waited for before the size is looked at, ms. */
const restMs = 1000

/**
 * A copy that follows a document both ways and is what is sent. The document itself holds on to what was removed for as
 * long as it can be undone, and would never grow smaller for the server.
 */
function followed(document: Doc): { readonly copy: Doc; readonly stop: () => void } {
  const copy = new Doc()
  applyUpdate(copy, encodeStateAsUpdate(document), document)
  const there = (update: Uint8Array, origin: unknown): void => {
    if (origin !== copy) applyUpdate(copy, update, document)
  }
  const back = (update: Uint8Array, origin: unknown): void => {
    if (origin !== document) applyUpdate(document, update, copy)
  }
  document.on('update', there)
  copy.on('update', back)
  const stop = (): void => {
    document.off('update', there)
    copy.destroy()
  }
  return { copy, stop }
}

export type SharedDocument = { readonly name: string; readonly document: Doc }

export function syncDocument(
  websocketProvider: HocuspocusProviderWebsocket,
  { name, document }: SharedDocument,
): DocumentSync {
  const listeners = createListeners()
  const { copy, stop: unfollow } = followed(document)
  const bytes = (): number => encodeStateAsUpdate(copy).length
  let met = false
  let stopped: { readonly why: NotTaken; readonly bytes: number } | undefined
  let timer: ReturnType<typeof setTimeout> | undefined

  const attach = (): HocuspocusProvider => {
    const made = new HocuspocusProvider({
      websocketProvider,
      name,
      document: copy,
      token: 'page',
      onSynced: () => {
        met = true
        listeners.tell()
      },
      onUnsyncedChanges: listeners.tell,
      onAuthenticationFailed: listeners.tell,
      onStateless: ({ payload }) => {
        const told = readSocketTold(payload)
        if (told?.kind === 'refused')
          stop({ code: meanings[told.code] ?? 'web.serverRefuses', data: told.data })
      },
    })
    made.attach()
    return made
  }
  const stop = (why: NotTaken): void => {
    if (stopped) return
    stopped = { why, bytes: bytes() }
    met = false
    provider.destroy()
    if (why.code === passing) timer = setTimeout(again, passingMs)
    listeners.tell()
  }
  const again = (): void => {
    clearTimeout(timer)
    if (!stopped) return
    stopped = undefined
    provider = attach()
    listeners.tell()
  }
  const measure = (): void => {
    if (stopped && bytes() < stopped.bytes) again()
  }
  const changed = (): void => {
    if (!stopped || stopped.why.code === passing) return
    clearTimeout(timer)
    timer = setTimeout(measure, restMs)
  }
  let provider = attach()
  copy.on('update', changed)
  return {
    listen: listeners.listen,
    waiting: () => (met ? provider.unsyncedChanges : undefined),
    notTaken: () => stopped?.why,
    again,
    stop,
    bytes: () => (stopped ? 0 : bytes()),
    close: () => {
      clearTimeout(timer)
      if (!stopped) provider.destroy()
      unfollow()
    },
  }
}
