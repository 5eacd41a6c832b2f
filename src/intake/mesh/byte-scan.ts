/** Walks over the bytes of a text file: words, numbers and line ends, without making a string of the whole. */
import { shown } from '../problem.ts'
import { MeshFault } from './mesh-fault.ts'
import { mostNumberLength } from './mesh-limits.ts'

const [tab, feed, carriage, space, backslash] = [9, 10, 13, 32, 92]
const [plus, minus, point, zero, nine] = [43, 45, 46, 48, 57]
/** Sets the bit that parts small letters from capitals. */
const small = 32
const letterE = 101

/** Powers of ten that a double holds exactly: a product or quotient with one is rounded once, as it should be. */
const tens = Float64Array.from({ length: 23 }, (_, power) => Number(`1e${power}`))
/** Digits that always fit a double. */
const mostDigits = 15

export class ByteScan {
  readonly bytes: Uint8Array
  at: number
  line: number
  /** The digits last read, as a whole number, and how many stand after its first that is not 0. */
  #whole = 0
  #digits = 0

  constructor(bytes: Uint8Array, start: { readonly at: number; readonly line: number }) {
    this.bytes = bytes
    this.at = start.at
    this.line = start.line
  }

  get ended(): boolean {
    return this.at >= this.bytes.length
  }

  /** Past blanks within the line; a backslash at its end joins the next one to it. */
  skipBlanks(): void {
    const { bytes } = this
    for (;;) {
      const byte = bytes[this.at]
      if (byte === space || byte === tab || byte === carriage) this.at++
      else if (byte !== backslash || !this.#joinsNext()) return
    }
  }

  #joinsNext(): boolean {
    const next = this.bytes[this.at + 1] === carriage ? this.at + 2 : this.at + 1
    if (this.bytes[next] !== feed) return false
    this.at = next + 1
    this.line++
    return true
  }

  /** Past blanks and line ends. */
  skipSpace(): void {
    const { bytes } = this
    for (; this.at < bytes.length; this.at++) {
      const byte = bytes[this.at]!
      if (byte === feed) this.line++
      else if (byte !== space && byte !== tab && byte !== carriage) return
    }
  }

  /** To the start of the next line. */
  skipLine(): void {
    const end = this.bytes.indexOf(feed, this.at)
    this.at = end === -1 ? this.bytes.length : end + 1
    if (end !== -1) this.line++
  }

  /** Whether nothing but blanks is left of the line. */
  atLineEnd(): boolean {
    this.skipBlanks()
    return this.ended || this.bytes[this.at] === feed
  }

  /** Whether `word`, in bytes of small letters, stands here by itself in any case; then the scan goes behind it. */
  takes(word: Uint8Array): boolean {
    for (let i = 0; i < word.length; i++) if ((this.bytes[this.at + i]! | small) !== word[i]) return false
    const after = this.bytes[this.at + word.length]
    if (after !== undefined && after > space) return false
    this.at += word.length
    return true
  }

  /** The word here for a person to read; the scan stays before it. */
  told(): string {
    let end = this.at
    while (end < this.bytes.length && this.bytes[end]! > space && end - this.at <= mostNumberLength) end++
    return shown(String.fromCharCode(...this.bytes.subarray(this.at, end)))
  }

  /** The number here; throws where there is none. The scan stands behind it. */
  number(): number {
    const { bytes } = this
    const start = this.at
    const sign = bytes[start]
    this.#whole = 0
    this.#digits = 0
    let at = sign === minus || sign === plus ? start + 1 : start
    const first = at
    at = this.#digitsFrom(at)
    let places = 0
    let figures = at - first
    if (bytes[at] === point) {
      const behind = this.#digitsFrom(at + 1)
      places = behind - at - 1
      figures += places
      at = behind
    }
    let power = -places
    if ((bytes[at]! | small) === letterE) {
      const exponent = this.#exponentFrom(at + 1)
      if (Number.isNaN(exponent)) return this.#oddNumber()
      power += exponent
      at = this.#end
    }
    const isOver = bytes[at] === undefined || bytes[at]! <= space
    if (!isOver || figures === 0 || this.#digits > mostDigits || Math.abs(power) > 22)
      return this.#oddNumber()
    this.at = at
    const size = power < 0 ? this.#whole / tens[-power]! : this.#whole * tens[power]!
    return sign === minus ? -size : size
  }

  #digitsFrom(from: number): number {
    const { bytes } = this
    let whole = this.#whole
    let digits = this.#digits
    let at = from
    for (; at < bytes.length; at++) {
      const byte = bytes[at]!
      if (byte < zero || byte > nine) break
      whole = whole * 10 + (byte - zero)
      if (whole !== 0) digits++
    }
    this.#whole = whole
    this.#digits = digits
    return at
  }

  /** Where the exponent last read ends. */
  #end = 0

  /** A short exponent; NaN when it is none, or long. */
  #exponentFrom(from: number): number {
    const { bytes } = this
    const sign = bytes[from]
    let at = sign === minus || sign === plus ? from + 1 : from
    const first = at
    let value = 0
    for (; at < bytes.length && at - first < 4; at++) {
      const byte = bytes[at]!
      if (byte < zero || byte > nine) break
      value = value * 10 + (byte - zero)
    }
    this.#end = at
    if (at === first) return Number.NaN
    return sign === minus ? -value : value
  }

  /** A number of many digits or a large power, by way of a string; or none at all. */
  #oddNumber(): number {
    const start = this.at
    let end = start
    while (end < this.bytes.length && this.bytes[end]! > space && end - start <= mostNumberLength) end++
    const text = String.fromCharCode(...this.bytes.subarray(start, end))
    const isNumber = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(text)
    if (!isNumber || end - start > mostNumberLength) this.#noNumber(text)
    this.at = end
    return Number(text)
  }

  #noNumber(text: string): never {
    if (this.ended) throw new MeshFault('intake.meshCutShort', { sizeBytes: this.bytes.length })
    const found = { found: shown(text) }
    const isPlace = /^[+-]?(nan|inf|1\.#)/i.test(text)
    throw new MeshFault(isPlace ? 'intake.meshNotFinite' : 'intake.meshNumberNotRead', found, this.line)
  }
}

/** Small letters as bytes, for `takes`. */
export function bytesOf(word: string): Uint8Array {
  return Uint8Array.from(word, (letter) => letter.charCodeAt(0))
}
