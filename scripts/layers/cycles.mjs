// Import cycles between files.

/**
 * @param {ReadonlyMap<string, readonly string[]>} graph from each file to the files it imports
 * @returns {string[][]} one path around each knot of files that import each other, its first file once
 */
export function cyclesIn(graph) {
  /** @type {Map<string, 'open' | 'done'>} */
  const state = new Map()
  /** @type {string[]} */
  const trail = []
  /** @type {string[][]} */
  const cycles = []

  /** @param {string} file */
  function visit(file) {
    state.set(file, 'open')
    trail.push(file)
    for (const next of graph.get(file) ?? []) {
      const seen = state.get(next)
      if (seen === 'open') cycles.push(trail.slice(trail.indexOf(next)))
      else if (seen === undefined && graph.has(next)) visit(next)
    }
    trail.pop()
    state.set(file, 'done')
  }

  for (const file of [...graph.keys()].sort()) if (!state.has(file)) visit(file)
  return cycles
}
