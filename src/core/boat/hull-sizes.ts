/** The few sizes a hull can be drawn from when nobody has measured stations. */

export type Bilge = 'hard-chine' | 'round-bilge'

/** Lengths in metres, angles in radians, heights from the floating waterline. */
export type HullSizes = {
  readonly form: Bilge
  readonly lengthOverall: number
  readonly lengthWaterline?: number
  /** Greatest beam at the sheer. */
  readonly beam: number
  /** Beam of the transom at the sheer; 0 for a pointed stern. */
  readonly beamTransom?: number
  /** Depth of the hull body below the waterline, without fin keel, skeg or drive. */
  readonly draft?: number
  readonly freeboardStem: number
  readonly freeboardMid?: number
  readonly freeboardStern?: number
  /** Angle of the bottom to the horizontal at mid length. */
  readonly deadrise?: number
  readonly deadriseTransom?: number
  /** Beam over the chines at mid length; on a round bilge, where the lines of bottom and side would meet. */
  readonly chineBeam?: number
  /** Height of that corner over the waterline at mid length, negative when it lies under water. */
  readonly chineHeight?: number
  /** Mean angle of the stem to the vertical between waterline and sheer, positive when the head is foremost. */
  readonly stemRake?: number
  /** Angle of the side to the vertical at mid length, positive when it leans out. */
  readonly flare?: number
}

type Settled = Exclude<keyof HullSizes, 'form' | 'chineHeight' | 'flare' | 'stemRake'>

/** Every size settled: what was given, worked out from the others, or assumed. */
export type SettledSizes = { readonly [Size in Settled]-?: number } & {
  readonly form: Bilge
  /** Only where it was given: it then stands before the deadrise. */
  readonly chineHeight?: number
}
