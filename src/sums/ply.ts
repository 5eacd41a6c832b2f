/** Ply: thickness and resin of a laminated cloth. */

import type { Note } from '#core/note'
import {
  fibreVolumeShare,
  glassDensity,
  laminatePerArea,
  plyThickness,
  polyesterDensity,
  resinPerArea,
} from '#core/repair'
import type { SumField } from './field.ts'
import { defineSum, how, result } from './sum.ts'

const source = 'ISO 12215-5:2008, laminate thickness'
/** Glass shares that hand lay-up reaches: mat wet out very rich to cloth pressed dry. */
const handLaid = { leastShare: 0.2, mostShare: 0.6 }

export const weightInput: SumField = {
  name: 'weight',
  dimension: 'areicMass',
  required: true,
  limits: { over: 0, atMost: 10 },
  doc: 'Dry glass by area; mat ounces are by square foot, cloth ounces by square yard.',
  example: '450 g/m²',
}

export const glassInput: SumField = {
  name: 'glass',
  dimension: 'share',
  required: true,
  limits: { over: 0, atMost: 1 },
  doc: 'Glass by mass of the laminate: about 30 % in mat, 48 % in woven roving.',
  example: '30 %',
}

export const ply = defineSum({
  id: 'ply',
  doc: 'Thickness and resin of a ply.',
  inputs: [weightInput, glassInput],
  work: (given) => {
    const cloth = { areicMass: given.number('weight'), glassShare: given.number('glass') }
    const densities = { glassDensity, resinDensity: polyesterDensity }
    const thicknessMm = plyThickness({ ...cloth, ...densities }) * 1000
    const glass = { weightGPerM2: cloth.areicMass * 1000, glassShare: cloth.glassShare }
    const resinKgPerM2 = resinPerArea(cloth)
    return {
      results: [
        result('thicknessMm', thicknessMm, 'length'),
        result('resinKgPerM2', resinKgPerM2, 'areicMass'),
        result('laminateKgPerM2', laminatePerArea(cloth), 'areicMass'),
        result('fibreVolumeShare', fibreVolumeShare({ ...densities, glassShare: cloth.glassShare }), 'share'),
      ],
      how: [
        how('sums.plyResin', { ...glass, resinKgPerM2 }),
        how('sums.plyThickness', {
          ...glass,
          glassKgPerM3: glassDensity,
          resinKgPerM3: polyesterDensity,
          thicknessMm,
        }),
      ],
      notes: [plyDensities, ...shareNotes(cloth.glassShare)],
      sources: [source],
    }
  },
})

const plyDensities: Note = {
  code: 'sums.plyDensities',
  severity: 'assumed',
  data: { glassKgPerM3: glassDensity, resinKgPerM3: polyesterDensity },
  source,
}

function shareNotes(glassShare: number): Note[] {
  const usual = glassShare >= handLaid.leastShare && glassShare <= handLaid.mostShare
  if (usual) return []
  return [{ code: 'sums.plyGlassUnusual', severity: 'notice', data: { glassShare, ...handLaid } }]
}
