/** The document server: who may open what, and that every edit is on the disk before it is acknowledged. */
import { type beforeHandleMessagePayload, Hocuspocus } from '@hocuspocus/server'
import * as Y from 'yjs'
import { protocol, type Sees, type SocketTold } from '#replica'
import { StoreError } from '#store'
import { Refused } from '../http/refusal.ts'
import type { ServerOptions } from '../options.ts'
import { mayHave } from './document-name.ts'
import { closing, type GuardedSocket } from './guarded-socket.ts'
import { createKeptDocuments, type KeptDocuments } from './kept-documents.ts'
import { isEmpty, readMessage } from './read-message.ts'

/** What belongs to a socket, handed through the document server. */
export type SocketContext = { readonly sees: Sees; readonly socket: GuardedSocket }

export type SharedDocuments = {
  readonly hocuspocus: Hocuspocus
  readonly settled: () => Promise<void>
}

/** Longest that a timer can wait: sockets are watched elsewhere, by one timer for all. */
const neverMs = 2 ** 31 - 1

export function createSharedDocuments(
  options: Pick<ServerOptions, 'store' | 'limits' | 'tell' | 'app'>,
): SharedDocuments {
  const kept = createKeptDocuments(options)
  const hocuspocus: Hocuspocus = new Hocuspocus({
    quiet: true,
    timeout: neverMs,
    // Nothing is stored by these hooks; the delay would only keep documents open.
    debounce: 0,
    onAuthenticate: async ({ context, documentName }) => {
      if (!mayHave((context as SocketContext).sees, documentName)) throw { reason: 'server.documentRefused' }
    },
    onLoadDocument: async ({ context, documentName, document }) => {
      try {
        await kept.load(documentName, document)
      } catch (error) {
        tellFailure(error, options)
        ;(context as SocketContext).socket.close(closing.tryAgain)
        throw { reason: 'server.storeFailed' }
      }
    },
    connected: async ({ connection, context, documentName }) => {
      // It was let go of while it was being opened: nothing that others edit would reach this page.
      if (hocuspocus.documents.get(documentName) !== connection.document)
        (context as SocketContext).socket.close(closing.tryAgain)
      connection.sendStateless(
        JSON.stringify({ kind: 'hello', protocol, app: options.app } satisfies SocketTold),
      )
    },
    beforeHandleMessage: (payload) => keep(payload, { kept, options }),
    afterUnloadDocument: ({ documentName }) => kept.leave(documentName),
  })
  return { hocuspocus, settled: kept.settled }
}

type Keeping = {
  readonly kept: KeptDocuments
  readonly options: Pick<ServerOptions, 'tell'>
}

/** Returns once the edit that a message carries is on the disk; the acknowledgement follows. */
async function keep(payload: beforeHandleMessagePayload, { kept, options }: Keeping): Promise<void> {
  const { connection, document, documentName, update: bytes } = payload
  const message = readMessage(bytes)
  if (message?.kind !== 'edit' || connection.readOnly || isEmpty(message.update)) return
  const { update, isMeeting } = message
  // Every meeting names all removals again. What the document holds is on the disk already.
  if (isMeeting && Y.snapshotContainsUpdate(Y.snapshot(document), update)) return
  try {
    await kept.append(documentName, update)
  } catch (error) {
    tellFailure(error, options)
    const { code, data } = error instanceof Refused ? error.refusal : { code: 'server.storeFailed', data: {} }
    connection.sendStateless(JSON.stringify({ kind: 'refused', code, data } satisfies SocketTold))
    // Without this the page stays connected, and never sends the edit again.
    connection.webSocket.close(closing.tryAgain)
    throw { code: closing.tryAgain, reason: code }
  }
  await bringToReopened(payload, update)
}

/** The page may have left while its edit was written, and another have opened the document again without it. */
async function bringToReopened(
  { instance, document, documentName }: beforeHandleMessagePayload,
  update: Uint8Array,
): Promise<void> {
  const loading = await instance.loadingDocuments.get(documentName)?.catch(() => undefined)
  const open = loading ?? instance.documents.get(documentName)
  if (open !== undefined && open !== document) Y.applyUpdate(open, update)
}

function tellFailure(error: unknown, { tell }: Pick<ServerOptions, 'tell'>): void {
  if (error instanceof StoreError) tell({ code: error.code, data: error.data })
  else if (error instanceof Refused) tell({ code: error.refusal.code, data: error.refusal.data })
  else
    tell({
      code: 'server.ownFault',
      data: { text: error instanceof Error ? (error.stack ?? '') : String(error) },
    })
}
