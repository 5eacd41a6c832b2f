/** Tells corners of equal bits from new ones while a file is read, so that its points need room only once. */

/** Corners by three words of bits. */
export class CornerTable {
  /** The words of each corner, in the order they came. */
  readonly words: Int32Array<ArrayBuffer>
  #count = 0
  /** Numbers of corners, from 1, by the hash of their words; 0 is free. */
  #table: Uint32Array<ArrayBuffer>

  /** For `most` corners at the most. */
  constructor(most: number) {
    this.words = new Int32Array(3 * most)
    // A closed surface has half as many points as triangles, so a sixth of its corners.
    this.#table = new Uint32Array(2 ** Math.max(4, Math.ceil(Math.log2(most / 3 + 1))))
  }

  get count(): number {
    return this.#count
  }

  /** The number of the corner with these words, from 0: an earlier one, or the next. */
  numberOf(x: number, y: number, z: number): number {
    const { words } = this
    const mask = this.#table.length - 1
    for (let slot = hash(x, y, z) & mask; ; slot = (slot + 1) & mask) {
      const at = 3 * this.#table[slot]! - 3
      if (at < 0) return this.#add(slot, x, y, z)
      if (words[at] === x && words[at + 1] === y && words[at + 2] === z) return this.#table[slot]! - 1
    }
  }

  #add(slot: number, x: number, y: number, z: number): number {
    const number = this.#count++
    this.#table[slot] = number + 1
    this.words[3 * number] = x
    this.words[3 * number + 1] = y
    this.words[3 * number + 2] = z
    if (2 * this.#count > this.#table.length) this.#grow()
    return number
  }

  #grow(): void {
    const { words } = this
    const larger = new Uint32Array(2 * this.#table.length)
    const mask = larger.length - 1
    for (let number = 0; number < this.#count; number++) {
      let slot = hash(words[3 * number]!, words[3 * number + 1]!, words[3 * number + 2]!) & mask
      while (larger[slot] !== 0) slot = (slot + 1) & mask
      larger[slot] = number + 1
    }
    this.#table = larger
  }
}

/** All bits count: scans lie on grids, where simple sums fall together. */
function hash(x: number, y: number, z: number): number {
  let h = Math.imul(x, 0x9e3779b1)
  h = Math.imul((h ^ (h >>> 15)) + y, 0x85ebca77)
  h = Math.imul((h ^ (h >>> 13)) + z, 0xc2b2ae3d)
  return h ^ (h >>> 16)
}
