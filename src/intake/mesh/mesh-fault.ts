/** Why a mesh file is not taken. Thrown inside the readers, where the fault is found; caught at their one door. */
import type { ProblemData } from '../problem.ts'

export class MeshFault extends Error {
  readonly code: string
  readonly data: ProblemData
  /** Line of the file, from 1; undefined in a file that has none. */
  readonly line: number | undefined

  constructor(code: string, data: ProblemData, line?: number) {
    super(`mesh file: ${code}, got ${JSON.stringify(data)}`)
    this.code = code
    this.data = data
    this.line = line
  }
}
