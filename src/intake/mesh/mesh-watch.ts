/** Lets a reader say how far it is and be stopped between two pieces of work. */
import { MeshFault } from './mesh-fault.ts'

export type MeshWatch = {
  /** Called now and then with how much of the file is read, 0 to 1, never falling. */
  readonly progress: (share: number) => void
  /** Asked as often; once it is true the reader gives up. */
  readonly stopped: () => boolean
}

/** Rows between two looks at the watch, less one: a mask over the row's number. */
export const rowsBetween = 0xffff

/** Tells the share that is done; throws when the reader is to stop. */
export function look(watch: MeshWatch, done: number, whole: number): void {
  if (watch.stopped()) throw new MeshFault('intake.meshStopped', {})
  watch.progress(whole > 0 ? Math.min(done / whole, 1) : 1)
}
