/** Picks the scale of the lines plan so that all three views fit the sheet. */

/** Scales as printed; 1:20, 1:50 and 1:100 are those of ISO 5455, the rest fill the gaps between them. */
const scales = [5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 400, 500]

export type Extent = {
  readonly length: number
  readonly beam: number
  /** Sheer to keel. */
  readonly depth: number
  readonly halfBeam: number
}

export type Room = { readonly width: number; readonly height: number }

/** Taken up by labels, dimensions and gaps, mm. */
export const allowance = { left: 15, between: 10, right: 1, top: 7, middle: 13, bottom: 5 }

export function scaleFor(extent: Extent, room: Room): number {
  const across = (extent.length + extent.beam) * 1000
  const down = (extent.depth + extent.halfBeam) * 1000
  const fits = (scale: number): boolean =>
    across / scale + allowance.left + allowance.between + allowance.right <= room.width &&
    down / scale + allowance.top + allowance.middle + allowance.bottom <= room.height
  return scales.find(fits) ?? scales.at(-1)!
}
