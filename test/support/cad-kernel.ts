/**
 * Lofts in a CAD kernel, as an oracle: the same bicubic patches as B-spline faces, whose areas and plane sections it
 * measures by ways of its own. The package is for tests alone, and large; without it the oracle is left out, by name.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { OpenCascadeInstance, TopoDS_Shape } from 'replicad-opencascadejs'
import type { Loft, LoftStrip, Spline } from '#core/geometry'

export const kernelName = 'replicad-opencascadejs'

const wasm = (): string | undefined => {
  try {
    return createRequire(import.meta.url).resolve(`${kernelName}/wasm`)
  } catch {
    return undefined
  }
}

export const hasKernel = wasm() !== undefined

export type Kernel = {
  readonly areaOf: (shapes: readonly TopoDS_Shape[]) => number
  /** Length of the cut of the shapes by the plane through a point, square to a direction. */
  readonly sectionOf: (shapes: readonly TopoDS_Shape[], plane: Cut) => number
  /** One face a strip. */
  readonly facesOf: (loft: Loft) => readonly TopoDS_Shape[]
}

type Triple = readonly [number, number, number]
export type Cut = { readonly point: Triple; readonly normal: Triple }

/** Relative accuracy that the kernel is asked for. */
const kernelAccuracy = 1e-9
/** Ends of edges nearer than this are one, m. */
const kernelTolerance = 1e-7

export async function openKernel(): Promise<Kernel> {
  const { default: open } = await import('replicad-opencascadejs')
  const oc = await open({ wasmBinary: readFileSync(wasm()!) })
  return {
    areaOf: (shapes) => sum(shapes.map((shape) => areaIn(oc, shape))),
    sectionOf: (shapes, cut) => sum(shapes.map((shape) => sectionIn(oc, shape, cut))),
    facesOf: (loft) => loft.strips.map((strip) => faceIn(oc, loft, strip)),
  }
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)

function areaIn(oc: OpenCascadeInstance, shape: TopoDS_Shape): number {
  const properties = new oc.GProp_GProps()
  oc.BRepGProp.SurfaceProperties(shape, properties, kernelAccuracy, false)
  return properties.Mass()
}

function sectionIn(oc: OpenCascadeInstance, shape: TopoDS_Shape, { point, normal }: Cut): number {
  const plane = new oc.gp_Pln(new oc.gp_Pnt(...point), new oc.gp_Dir(...normal))
  const properties = new oc.GProp_GProps()
  oc.BRepGProp.LinearProperties(
    new oc.BRepAlgoAPI_Section(shape, plane, true).Shape(),
    properties,
    false,
    false,
  )
  return properties.Mass()
}

/** Poles of a cubic with every knot double from its values and slopes: one on either side of each knot. */
function polesOf({ knots, values, slopes }: Spline): readonly number[] {
  return knots.flatMap((knot, i) => {
    const before = i > 0 ? (knot - knots[i - 1]!) / 3 : 0
    const after = i < knots.length - 1 ? (knots[i + 1]! - knot) / 3 : 0
    return [values[i]! - before * slopes[i]!, values[i]! + after * slopes[i]!]
  })
}

const evenly = (cells: number): readonly number[] => Array.from({ length: cells + 1 }, (_, j) => j / cells)

function faceIn(oc: OpenCascadeInstance, { knots, along }: Loft, { cells, rows }: LoftStrip): TopoDS_Shape {
  const across = evenly(cells)
  /** Poles of one coordinate: across each row first, its slopes along too, then along each column of those. */
  const grid = (at: 'y' | 'z'): readonly (readonly number[])[] => {
    const values = rows.map((row) => polesOf({ knots: across, values: row[at], slopes: row[`${at}V`] }))
    const slopes = rows.map((row) =>
      polesOf({ knots: across, values: row[`${at}U`], slopes: row[`${at}UV`] }),
    )
    return values[0]!.map((_, j) =>
      polesOf({ knots, values: values.map((row) => row[j]!), slopes: slopes.map((row) => row[j]!) }),
    )
  }
  const [x, y, z] = [polesOf(along), grid('y'), grid('z')]
  const poles = new oc.NCollection_Array2_gp_Pnt(1, x.length, 1, y.length)
  x.forEach((value, i) => {
    y.forEach((column, j) => {
      poles.SetValue(i + 1, j + 1, new oc.gp_Pnt(value, column[i]!, z[j]![i]!))
    })
  })
  const u = knotsIn(oc, knots)
  const v = knotsIn(oc, across)
  const surface = new oc.Geom_BSplineSurface(poles, u.knots, v.knots, u.times, v.times, 3, 3)
  return new oc.BRepBuilderAPI_MakeFace(surface, kernelTolerance).Face()
}

function knotsIn(oc: OpenCascadeInstance, places: readonly number[]) {
  const knots = new oc.NCollection_Array1_double(1, places.length)
  const times = new oc.NCollection_Array1_int(1, places.length)
  places.forEach((place, i) => {
    knots.SetValue(i + 1, place)
    times.SetValue(i + 1, i === 0 || i === places.length - 1 ? 4 : 2)
  })
  return { knots, times }
}
