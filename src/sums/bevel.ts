/** Bevel: the taper to grind round a hole and the discs of cloth that fill it. */

import type { Note } from '#core/note'
import { patchMasses, taperedPatch } from '#core/repair'
import type { Given } from './given.ts'
import { glassInput, weightInput } from './ply.ts'
import { defineSum, how, result, type SumResult } from './sum.ts'

const source = 'scarf ratio of composite repair texts; comparison of 1:6, 1:12 and 1:20, 2019'
const usualRatio = 12

export const bevel = defineSum({
  id: 'bevel',
  doc: 'Taper and patch discs of a round hole.',
  inputs: [
    {
      name: 'hole',
      dimension: 'length',
      required: true,
      limits: { atLeast: 0, atMost: 5 },
      doc: 'Diameter of the hole trimmed to sound laminate; 0 mm for a crack ground to a point.',
      example: '50 mm',
    },
    {
      name: 'thickness',
      dimension: 'length',
      required: true,
      limits: { over: 0, atMost: 0.2 },
      doc: 'Depth of the taper: the laminate’s thickness.',
      example: '6 mm',
    },
    {
      name: 'ratio',
      dimension: 'ratio',
      required: true,
      limits: { over: 0, atMost: 200 },
      doc: 'Run to rise of the taper.',
      example: '12:1',
    },
    {
      name: 'plies',
      dimension: 'count',
      required: true,
      limits: { atLeast: 1, atMost: 100 },
      doc: 'Plies of equal thickness.',
      example: '6',
    },
    { ...weightInput, required: false },
    { ...glassInput, required: false },
  ],
  work: (given) => {
    const typed = given.number('ratio')
    // Nobody grinds deeper than wide: 1:12 is rise to run, the other way round.
    const ratio = typed < 1 ? 1 / typed : typed
    const hole = { hole: given.number('hole'), thickness: given.number('thickness') }
    const patch = taperedPatch({ ...hole, ratio, plies: given.number('plies') })
    const figures = { holeMm: hole.hole * 1000, thicknessMm: hole.thickness * 1000, ratio }
    const outerDiameterMm = patch.outerDiameter * 1000
    return {
      results: [
        result(
          'discsMm',
          patch.discs.map((disc) => disc.diameter * 1000),
          'length',
        ),
        result('bevelWidthMm', patch.bevelWidth * 1000, 'length'),
        result('outerDiameterMm', outerDiameterMm, 'length'),
        result('stepMm', patch.step * 1000, 'length'),
        result('angleDeg', (patch.angle * 180) / Math.PI, 'angle'),
        result('clothM2', patch.clothArea, 'area'),
        result('volumeMl', patch.volume * 1e6, 'volume'),
        result('bondM2', patch.bondArea, 'area'),
        ...massResults(given, patch),
      ],
      how: [
        how('sums.bevelOuter', { ...figures, bevelWidthMm: patch.bevelWidth * 1000, outerDiameterMm }),
        how('sums.bevelStep', {
          bevelWidthMm: patch.bevelWidth * 1000,
          plies: given.number('plies'),
          stepMm: patch.step * 1000,
        }),
      ],
      notes: [...turnedNotes(typed, ratio), ...steepNotes(ratio), ...massNotes(given), plyOrder],
      sources: [source],
    }
  },
})

/** Glass and resin when the cloth is known. */
function massResults(given: Given, patch: ReturnType<typeof taperedPatch>): SumResult[] {
  const areicMass = given.optional('weight')
  const glassShare = given.optional('glass')
  if (areicMass === undefined || glassShare === undefined) return []
  const { glassMass, resinMass } = patchMasses(patch, { areicMass, glassShare })
  return [result('glassG', glassMass * 1000, 'mass'), result('resinG', resinMass * 1000, 'mass')]
}

/** Cloth without its glass share, or the other way round, is not enough for masses. */
function massNotes(given: Given): Note[] {
  const weight = given.optional('weight') !== undefined
  const glass = given.optional('glass') !== undefined
  if (weight === glass) return []
  const field = weight ? 'glass' : 'weight'
  return [{ code: 'sums.bevelMassMissing', severity: 'missing', data: { field } }]
}

function turnedNotes(typed: number, ratio: number): Note[] {
  return typed < 1 ? [{ code: 'sums.bevelTurned', severity: 'info', data: { ratio } }] : []
}

function steepNotes(ratio: number): Note[] {
  if (ratio >= usualRatio) return []
  return [{ code: 'sums.bevelSteep', severity: 'caution', data: { ratio, usualRatio }, source }]
}

const plyOrder: Note = {
  code: 'sums.bevelPlyOrder',
  severity: 'info',
  data: {},
  source: 'published article on laminate repair',
}
