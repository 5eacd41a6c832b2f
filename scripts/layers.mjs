// Holds src/ against the table of rooms: `node scripts/layers.mjs`.

import { checkLayers } from './layers/check-layers.mjs'
import { readTree } from './layers/read-tree.mjs'
import { ROOT } from './ready/main.mjs'

const faults = checkLayers(readTree(ROOT))
for (const { path, line, problem } of faults) console.log(`${path}:${line}: ${problem}`)
console.log(
  faults.length === 0 ? 'layers: every import keeps to its room' : `layers: ${faults.length} to mend`,
)
process.exitCode = faults.length === 0 ? 0 : 1
