/** Where one colour ends and the next begins on a hull, and what can be wrong with that. Boat frame, metres. */

import type { Note } from '#core/note'
import { fault } from './fault.ts'
import { type Height, heightAt, higherOf } from './height.ts'
import type { Hull } from './hull.ts'
import { sheerHeightAt } from './hull-lines.ts'

export type BottomEdge = { readonly kind: 'height'; readonly z: Height } | { readonly kind: 'chine' }

export type BootTop = {
  readonly zLow: Height
  readonly zHigh: Height
  /** Whether the band runs on across the transom. */
  readonly acrossTransom: boolean
}

export type HullCuts = {
  /** Upper edge of the bottom: a height over the floating waterline, or the lowest chine. */
  readonly bottomTo: BottomEdge
  readonly bootTop?: BootTop
}

/** Cuts that can be worked: a chine only where the hull has one, the boot-top above the bottom, or none. */
export type WorkedCuts = { readonly cuts: HullCuts; readonly notes: readonly Note[] }

type Named = { readonly cut: 'bottom' | 'boot-top-low' | 'boot-top-high'; readonly height: Height }

const named = ({ bottomTo, bootTop }: HullCuts): readonly Named[] => [
  ...(bottomTo.kind === 'height' ? [{ cut: 'bottom', height: bottomTo.z } as const] : []),
  ...(bootTop
    ? ([
        { cut: 'boot-top-low', height: bootTop.zLow },
        { cut: 'boot-top-high', height: bootTop.zHigh },
      ] as const)
    : []),
]

const places = (hull: Hull): readonly number[] => hull.stations.map((station) => station.x)

const isReadable = (hull: Hull, { height }: Named): boolean =>
  places(hull).every((x) => Number.isFinite(heightAt(height, x)))

/** A cut over the sheer leaves no side there; the first place is named. */
const aboveSheer = (hull: Hull, { cut, height }: Named): readonly Note[] => {
  const station = hull.stations.find(({ x }) => heightAt(height, x) > sheerHeightAt(hull, x) + 1e-9)
  if (!station) return []
  const { id, x } = station
  const data = { cut, station: id, xM: x, heightM: heightAt(height, x), sheerHeightM: sheerHeightAt(hull, x) }
  return [fault('boat.cutAboveSheer', data)]
}

const withoutBootTop = ({ bottomTo }: HullCuts): HullCuts => ({ bottomTo })

const atWaterline: BottomEdge = { kind: 'height', z: 0 }

const settleBottom = (hull: Hull, cuts: HullCuts): WorkedCuts =>
  cuts.bottomTo.kind === 'chine' && !hull.edges.includes('chine')
    ? {
        cuts: { ...cuts, bottomTo: atWaterline },
        notes: [{ code: 'boat.chineMissing', severity: 'missing', data: { heightM: 0 } }],
      }
    : { cuts, notes: [] }

/** The band starts no lower than the bottom ends; a band that is then nowhere open is left out. */
const settleBootTop = (hull: Hull, cuts: HullCuts): WorkedCuts => {
  const { bootTop, bottomTo } = cuts
  if (!bootTop) return { cuts, notes: [] }
  const zLow = bottomTo.kind === 'height' ? higherOf(bottomTo.z, bootTop.zLow) : bootTop.zLow
  const isOpen = places(hull).some((x) => heightAt(bootTop.zHigh, x) > heightAt(zLow, x))
  if (isOpen)
    return {
      cuts: { bottomTo, bootTop: { ...bootTop, zLow, zHigh: higherOf(zLow, bootTop.zHigh) } },
      notes: [],
    }
  const x = places(hull)[0]!
  const data = { lowM: heightAt(zLow, x), highM: heightAt(bootTop.zHigh, x) }
  return { cuts: withoutBootTop(cuts), notes: [fault('boat.bootTopClosed', data)] }
}

/**
 * Cuts with their faults taken out: heights that are no numbers are dropped (a bottom goes to the waterline), a
 * missing chine becomes the waterline, a boot-top without height is left out; each with a note.
 */
export const workedCuts = (hull: Hull, asked: HullCuts): WorkedCuts => {
  const unreadable = named(asked).filter((one) => !isReadable(hull, one))
  const lost = (cut: Named['cut']) => unreadable.some((one) => one.cut === cut)
  const bottomTo = lost('bottom') ? atWaterline : asked.bottomTo
  const keepsBand = asked.bootTop && !lost('boot-top-low') && !lost('boot-top-high')
  const readable = keepsBand && asked.bootTop ? { bottomTo, bootTop: asked.bootTop } : { bottomTo }
  const bottom = settleBottom(hull, readable)
  const band = settleBootTop(hull, bottom.cuts)
  return {
    cuts: band.cuts,
    notes: [
      ...unreadable.map(({ cut }) => fault('boat.cutNotNumber', { cut })),
      ...bottom.notes,
      ...band.notes,
      ...named(band.cuts).flatMap((one) => aboveSheer(hull, one)),
    ],
  }
}
