/** What the server tells a page over the socket beside the documents: JSON in a stateless message. */

export type SocketTold =
  /** After a document was opened: the server's own versions. */
  | { readonly kind: 'hello'; readonly protocol: number; readonly app: string }
  /** An edit was not taken and is not kept; the socket closes next. */
  | {
      readonly kind: 'refused'
      readonly code: string
      readonly data: Readonly<Record<string, string | number>>
    }

/** Parameters of the socket's address, in which a page says what it is. */
export const socketParameters = { protocol: 'protocol', app: 'app' } as const

/** Reads such a message; undefined for anything else, since a newer server may say more. */
export function readSocketTold(payload: string): SocketTold | undefined {
  try {
    const told: unknown = JSON.parse(payload)
    if (typeof told !== 'object' || told === null || !('kind' in told)) return undefined
    return told.kind === 'hello' || told.kind === 'refused' ? (told as SocketTold) : undefined
  } catch {
    return undefined
  }
}
