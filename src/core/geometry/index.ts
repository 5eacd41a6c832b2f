/**
 * Curves, lofted surfaces, polygons and quadrature; knows no boats. Metres and radians, axes as each file's header says.
 */

export { type Bracket, bracketedRoot } from './bracketed-root.ts'
export {
  cubicSpline,
  greatestOf,
  keepRising,
  type Samples,
  type Spline,
  type SplinePlace,
  type SplinePoint,
  splineAt,
} from './cubic-spline.ts'
export {
  gauss3,
  gauss4,
  gauss5,
  type Integrand,
  integrate,
  integrateAdaptively,
  type QuadratureRule,
} from './gauss-legendre.ts'
export {
  type Loft,
  type LoftSection,
  type LoftStrip,
  loftParameterAt,
  loftThrough,
  type StripLine,
  type StripRow,
} from './loft.ts'
export {
  addBands,
  type BandIntegral,
  integrateBands,
  integrateRow,
  type RowBand,
} from './loft-bands.ts'
export { type LoftCell, type LoftCells, type LoftCorner, type LoftSteps, loftCells } from './loft-cells.ts'
export { type Contour, type ContourPoint, contours, rowTopmost } from './loft-contour.ts'
export type { Level } from './loft-level.ts'
export { edgeAlong, lineAcross, rowGirthTo } from './loft-lines.ts'
export {
  edgePointAt,
  type LoftLine,
  type LoftNode,
  type LoftPlace,
  type LoftRow,
  loftLineAt,
  loftRowAt,
  nodeSpline,
  rowPointAt,
} from './loft-row.ts'
export { clipMesh, cropMesh, withoutUnused } from './mesh/clip-mesh.ts'
export type { MeshPart } from './mesh/facing.ts'
export { type Box, meshArea, meshBox, meshVolume } from './mesh/mesh-measure.ts'
export { type OpenLoop, openLoops } from './mesh/open-loops.ts'
export {
  flippedPlane,
  heightOver,
  levelPlane,
  type Plane,
  planeFoot,
  planeThrough,
} from './mesh/plane.ts'
export { planeSection, type SectionLine } from './mesh/plane-section.ts'
export { type SideSizes, splitByPlane } from './mesh/plane-split.ts'
export { type PointNormals, pointNormals } from './mesh/point-normals.ts'
export { type PrincipalAxes, principalAxes } from './mesh/principal-axes.ts'
export { type MeshFindings, type MeshRepair, type RepairedMesh, repairMesh } from './mesh/repair-mesh.ts'
export {
  inOrder,
  mirroring,
  movedMesh,
  movedPoint,
  moving,
  type Similarity,
  scaling,
  scalingTo,
  turning,
  undoing,
} from './mesh/similarity.ts'
export { type SmoothedMesh, type Smoothing, smoothMesh } from './mesh/smooth-mesh.ts'
export { type SymmetryPlane, symmetryPlane } from './mesh/symmetry-plane.ts'
export { pointCount, type TriangleMesh, triangleCount } from './mesh/triangle-mesh.ts'
export { between3, distance2, distance3, type Point2, type Point3 } from './points.ts'
export { type Polygon, polygonArea, polygonPerimeter, signedArea } from './polygon.ts'
export { holdsPlaces, type PolygonCrossing, polygonCrossing } from './polygon-crossing.ts'
export { clipPolyline, type Polyline, polylineLength, polylinesLength } from './polyline.ts'
export {
  insetRoundedRectangle,
  type RoundedRectangle,
  roundedRectangleArea,
  roundedRectanglePerimeter,
} from './rounded-rectangle.ts'
export { type SectionCurve, type SectionPoint, sectionCurve, sectionPointAt } from './section-curve.ts'
