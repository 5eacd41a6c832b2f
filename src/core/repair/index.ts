/** Repairs: plies and tapered patches. */

export type { Ply } from './ply-thickness.ts'
export {
  fibreVolumeShare,
  glassDensity,
  laminatePerArea,
  plyThickness,
  polyesterDensity,
  resinPerArea,
} from './ply-thickness.ts'
export type { PatchDisc, PatchMasses, TaperedPatch } from './tapered-patch.ts'
export { patchMasses, taperedPatch } from './tapered-patch.ts'
