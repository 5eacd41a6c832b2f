/** What keeps a server from starting: a wrong set-up, or a port that cannot be had. */

export type ServerErrorData = Readonly<Record<string, string | number>>

export class ServerError extends Error {
  readonly code: string
  readonly data: ServerErrorData

  /** `message` reads `noun: problem, got VALUE, expected ...`. */
  constructor(code: string, data: ServerErrorData, message: string) {
    super(message)
    this.name = 'ServerError'
    this.code = code
    this.data = data
  }
}
