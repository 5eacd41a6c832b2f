import {
  fibreVolumeShare,
  glassDensity,
  laminatePerArea,
  patchMasses,
  plyThickness,
  polyesterDensity,
  resinPerArea,
  taperedPatch,
} from '#core/repair'
import { checkPublished, figure, type Given } from './published.ts'

const inch = 0.0254
const densities = { glassDensity, resinDensity: polyesterDensity }

const ply = (given: Given) => ({
  areicMass: figure(given, 'areicGM2') / 1000,
  glassShare: figure(given, 'glassPct') / 100,
})
const thickness = (given: Given) => plyThickness({ ...ply(given), ...densities })

checkPublished('ply-thickness', {
  thicknessMm: (given) => 1000 * thickness(given),
  thicknessIn: (given) => thickness(given) / inch,
  thicknessByMassMm: (given) => 1000 * thickness(given),
  resinKgM2: (given) => resinPerArea(ply(given)),
  laminateKgM2: (given) => laminatePerArea(ply(given)),
  laminateDensity: (given) => laminatePerArea(ply(given)) / thickness(given),
  fibreVolumeShare: (given) =>
    fibreVolumeShare({ glassShare: figure(given, 'glassPct') / 100, ...densities }),
  fibreVolumeByRatio: (given) =>
    fibreVolumeShare({
      glassShare: figure(given, 'fibreG') / figure(given, 'totalG'),
      glassDensity: figure(given, 'ratio'),
      resinDensity: 1,
    }),
  resinToGlass: (given) => resinPerArea(ply(given)) / ply(given).areicMass,
})

// The forms hold in any unit of length, so the rows are worked in the unit they are printed in.
const patch = (given: Given) =>
  taperedPatch({
    hole: figure(given, 'hole'),
    thickness: figure(given, 'thickness'),
    ratio: figure(given, 'ratio'),
    plies: figure(given, 'plies'),
  })

/** The first case in metres for masses: mm² of cloth to m². */
const masses = (given: Given) =>
  patchMasses({ ...patch(given), clothArea: patch(given).clothArea * 1e-6 }, ply(given))

checkPublished('tapered-patch', {
  outerDiameter: (given) => patch(given).outerDiameter,
  disc: (given) => patch(given).discs[figure(given, 'disc')]?.diameter ?? Number.NaN,
  clothArea: (given) => patch(given).clothArea,
  middleArea: (given) => patch(given).middleArea,
  volume: (given) => patch(given).volume,
  bondArea: (given) => patch(given).bondArea,
  angleDeg: (given) => (patch(given).angle * 180) / Math.PI,
  bevelWidth: (given) => patch(given).bevelWidth,
  glassG: (given) => 1000 * masses(given).glassMass,
  resinG: (given) => 1000 * masses(given).resinMass,
})
