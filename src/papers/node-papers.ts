/** Every paper of a plan in Node, with the press of the installed packages. */
import { nodePress } from './node-press.ts'
import { papersFrom } from './papers-for.ts'
import type { Paper, PaperInput } from './types.ts'

/** Every paper there is something to put on. Rejects when a typeface or the writer is not installed. */
export const papersFor = async (input: PaperInput): Promise<readonly Paper[]> =>
  papersFrom(input, await nodePress())
