/** The error of the cure room: a time table that cannot be read as one. */

export type CureFault = 'cure.tableEmpty' | 'cure.hoursNotPositive' | 'cure.airNotFinite' | 'cure.airTwice'

export class CureError extends Error {
  readonly code: CureFault
  readonly data: Readonly<Record<string, number>>

  constructor(code: CureFault, data: Readonly<Record<string, number>>, message: string) {
    super(message)
    this.name = 'CureError'
    this.code = code
    this.data = data
  }
}
