/** Arrays of numbers that grow as a file is read, up to a limit that the reader gives. */
import { MeshFault } from './mesh-fault.ts'
import { mostPoints, mostTriangles } from './mesh-limits.ts'

/** Coordinates of points as they come. */
export class GrowingPoints {
  #values = new Float64Array(3 * 4096)
  #length = 0

  get count(): number {
    return this.#length / 3
  }

  add(x: number, y: number, z: number): void {
    if (this.#length === this.#values.length) this.#grow()
    this.#values[this.#length] = x
    this.#values[this.#length + 1] = y
    this.#values[this.#length + 2] = z
    this.#length += 3
  }

  taken(): Float64Array {
    return this.#values.slice(0, this.#length)
  }

  #grow(): void {
    if (this.count >= mostPoints) throw new MeshFault('intake.meshTooManyPoints', { most: mostPoints })
    const larger = new Float64Array(Math.min(2 * this.#values.length, 3 * mostPoints))
    larger.set(this.#values)
    this.#values = larger
  }
}

/** Triangles as they come. */
export class GrowingTriangles {
  #values = new Uint32Array(3 * 4096)
  #length = 0

  get count(): number {
    return this.#length / 3
  }

  add(a: number, b: number, c: number): void {
    if (this.#length === this.#values.length) this.#grow()
    this.#values[this.#length] = a
    this.#values[this.#length + 1] = b
    this.#values[this.#length + 2] = c
    this.#length += 3
  }

  taken(): Uint32Array {
    return this.#values.slice(0, this.#length)
  }

  #grow(): void {
    if (this.count >= mostTriangles)
      throw new MeshFault('intake.meshTooManyTriangles', { most: mostTriangles })
    const larger = new Uint32Array(Math.min(2 * this.#values.length, 3 * mostTriangles))
    larger.set(this.#values)
    this.#values = larger
  }
}
