/** Joins straight pieces that share ends into lines. */

export type Chain = {
  /** Numbers of the ends it passes; those of a closed one end with its first. */
  readonly ends: readonly number[]
  readonly closed: boolean
}

/**
 * Lines through pieces that run from the even entries to the odd ones after them; `ends` is how many ends there are.
 * Every piece is in one line. Where more than one piece leaves an end, lines part there as they come.
 */
export const chainsOf = (pieces: readonly number[], ends: number): readonly Chain[] => {
  const count = pieces.length / 2
  const arriving = new Uint8Array(ends)
  // Pieces that leave an end and are in no line yet: the first, and each one's next; numbers from 1.
  const heads = new Uint32Array(ends)
  const next = new Uint32Array(count + 1)
  for (let piece = count; piece > 0; piece--) {
    const from = pieces[2 * piece - 2]!
    arriving[pieces[2 * piece - 1]!] = 1
    next[piece] = heads[from]!
    heads[from] = piece
  }
  const follow = (start: number): Chain => {
    const passed = [start]
    let end = start
    while (heads[end] !== 0) {
      const piece = heads[end]!
      heads[end] = next[piece]!
      end = pieces[2 * piece - 1]!
      passed.push(end)
      if (end === start) break
    }
    return { ends: passed, closed: end === start }
  }
  const chains: Chain[] = []
  const drain = (start: number): void => {
    while (heads[start] !== 0) chains.push(follow(start))
  }
  for (let end = 0; end < ends; end++) if (arriving[end] === 0) drain(end)
  for (let i = 0; i < pieces.length; i += 2) drain(pieces[i]!)
  return chains
}
