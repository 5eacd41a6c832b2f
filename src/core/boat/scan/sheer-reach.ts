/** Sections that end below the sheer of those beside them are drawn on up to it, and it is told. */

import type { Note } from '#core/note'
import { assumption } from '../fault.ts'
import { girthOf, inSteps } from './half-section.ts'
import { type ScanSection, sectionSteps } from './scan-section.ts'

/** Lower by more than this share of its depth, and this much, m, is not the sheer; assumed. */
const [shortShare, shortBy] = [0.06, 0.03]

/** Sections stand from aft to forward. */
export const reachedSheer = (
  sections: readonly ScanSection[],
): { readonly sections: readonly ScanSection[]; readonly notes: readonly Note[] } => {
  const drawn: number[] = []
  const reached = [...sections]
  sections.forEach(({ x, spots }, own) => {
    const [before, after] = [sections[own - 1], sections[own + 1]]
    if (before === undefined || after === undefined) return
    const expected = sheerBetween(before, after, x)
    const lacks = expected - spots.at(-1)!.z
    if (lacks <= Math.max(shortShare * (expected - spots[0]!.z), shortBy)) return
    drawn.push(lacks)
    reached[own] = drawnUp(sections[own]!, lacks)
  })
  const data = { stations: drawn.length, mostM: Math.max(0, ...drawn) }
  return { sections: reached, notes: drawn.length > 0 ? [assumption('boat.scanSheerDrawn', data)] : [] }
}

const sheerBetween = (a: ScanSection, b: ScanSection, x: number): number => {
  const [from, to] = [a.spots.at(-1)!.z, b.spots.at(-1)!.z]
  return from + ((to - from) * (x - a.x)) / (b.x - a.x)
}

/** Straight on as the side runs at its top. */
const drawnUp = (section: ScanSection, lacks: number): ScanSection => {
  const { spots } = section
  const [below, top] = [spots[spots.length - 1 - Math.round(sectionSteps / 15)]!, spots.at(-1)!]
  const lean = top.z - below.z > 1e-9 ? (top.y - below.y) / (top.z - below.z) : 0
  const sheer = { y: Math.max(top.y + Math.min(Math.max(lean, -1), 1) * lacks, 0), z: top.z + lacks }
  const line = [...spots, sheer]
  return { ...section, spots: inSteps(line, sectionSteps), girth: girthOf(line) }
}
