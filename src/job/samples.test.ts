import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseJob, project, sampleNames } from './index.ts'

const read = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../samples/${name}.yaml`, import.meta.url)))

/** Kept apart from the catalogue, which this room may not import; these names are a promise to the samples. */
const catalogueIds = (
  'one-part-enamel one-part-deck two-part-finish epoxy-primer epoxy-high-build epoxy-tie epoxy-barrier epoxy-fairing ' +
  'epoxy-resin vinylester-filler polyester-putty polyester-resin gelcoat textured-acrylic solvent-dewax'
).split(' ')
const consumableIds = (
  'disc-80 disc-120 disc-220 disc-320 disc-400 grinder-disc-40 long-board-strip wiping-solvent wipe tack-cloth foam-cover ' +
  'tip-brush fine-line-tape masking-tape masking-paper tray-liner mixing-cup gloves respirator-cartridge thinner bead'
).split(' ')

describe.each(sampleNames)('the sample job %s', (name) => {
  const parsed = parseJob(read(name), { name: `${name}.yaml` })

  it('reads without any problem', () => {
    expect(parsed.problems).toEqual([])
    const projected = project(parsed.document!, {
      strict: true,
      locate: parsed.locate,
      catalogueIds,
      consumableIds,
    })
    expect(projected.problems).toEqual([])
    expect(projected.complete).toBe(true)
  })
})
