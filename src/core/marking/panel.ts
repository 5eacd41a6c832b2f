/** A non-skid panel in its field: what the smooth border and the round corners leave of it. */

import { type RoundedRectangle, roundedRectangleArea, roundedRectanglePerimeter } from '#core/geometry'
import type { Note } from '#core/note'

export type PanelInput = {
  /** The field that the panel lies in, edge to edge, m. */
  readonly lengthM: number
  readonly widthM: number
  /** Smooth border all round, m. */
  readonly borderM?: number
  /** Radius of every corner of the panel, m. */
  readonly cornerRadiusM?: number
  /** Panels alike, 1 or more. */
  readonly count: number
}

export type Panel = {
  /** Length, width and corner radius of one panel, m. */
  readonly lengthM: number
  readonly widthM: number
  readonly cornerRadiusM: number
  readonly borderM: number
  /** Area of one panel, m². */
  readonly areaM2: number
  /** The panel as a share of its field. */
  readonly leftShare: number
  /** Edge of one panel, m. */
  readonly perimeterM: number
  readonly count: number
  /** Area of all panels alike, m². */
  readonly allAreaM2: number
  /** Edge to tape once round all panels alike, m; stages and waste are the caller's. */
  readonly tapeM: number
}

export type PanelResult = {
  /** Undefined when a fault note says why. */
  readonly panel: Panel | undefined
  readonly notes: readonly Note[]
}

/** 1 1/2 in, measured off the deck edge in yard logs; 25 to 50 mm is usual. */
const usualBorderM = 0.038
/** 1/2 in; one radius for all corners. */
const usualRadiusM = 0.013
/** A narrower panel is left out or merged with its neighbour. */
const narrowM = 0.05

/**
 * Area = (L − 2b)(W − 2b) − (4 − π) r²; edge = 2 (L − 2b + W − 2b) − (8 − 2π) r.
 *
 * Inputs in m. A border or radius that is left out is assumed (38 mm, 13 mm; common practice) with a note, and
 * an assumed radius gives way where the panel is too narrow for it. No panel, and a fault note, when a size is
 * not a number above 0, when the borders meet, or when the given radius is over half the panel's width. A panel
 * under 50 mm wide is noted.
 */
export function panel(input: PanelInput): PanelResult {
  const { lengthM, widthM, count } = input
  const borderM = input.borderM ?? usualBorderM
  const sound = lengthM > 0 && widthM > 0 && borderM >= 0 && Number.isFinite(lengthM + widthM + borderM)
  if (!sound || !(Number.isInteger(count) && count > 0)) return fault('marking.panelSize', input)
  const inner = { lengthM: lengthM - 2 * borderM, widthM: widthM - 2 * borderM }
  const narrowest = Math.min(inner.lengthM, inner.widthM)
  if (!(narrowest > 0)) return fault('marking.bordersMeet', { ...input, borderM })
  const cornerRadiusM = input.cornerRadiusM ?? Math.min(usualRadiusM, narrowest / 2)
  if (!(cornerRadiusM >= 0 && cornerRadiusM <= narrowest / 2 + 1e-9)) {
    return fault('marking.cornerRadiusTooLarge', { cornerRadiusM, mostM: narrowest / 2 })
  }
  const shape = { length: inner.lengthM, width: inner.widthM, radius: cornerRadiusM }
  return {
    panel: { ...inner, borderM, cornerRadiusM, count, ...measures(shape, input) },
    notes: panelNotes(input, narrowest, cornerRadiusM),
  }
}

function measures(shape: RoundedRectangle, { lengthM, widthM, count }: PanelInput) {
  const areaM2 = roundedRectangleArea(shape)
  const perimeterM = roundedRectanglePerimeter(shape)
  const leftShare = areaM2 / (lengthM * widthM)
  return { areaM2, leftShare, perimeterM, allAreaM2: count * areaM2, tapeM: count * perimeterM }
}

function panelNotes(input: PanelInput, widthM: number, cornerRadiusM: number): readonly Note[] {
  const assumed = (code: string, data: Note['data']): Note => ({
    code,
    severity: 'assumed',
    data,
    source: 'assumed',
  })
  const notes: Note[] = []
  if (input.borderM === undefined) notes.push(assumed('marking.borderAssumed', { borderM: usualBorderM }))
  if (input.cornerRadiusM === undefined) notes.push(assumed('marking.radiusAssumed', { cornerRadiusM }))
  if (widthM < narrowM) {
    const data = { widthM, leastM: narrowM }
    notes.push({ code: 'marking.panelNarrow', severity: 'notice', data, source: 'assumed' })
  }
  return notes
}

function fault(code: string, data: Readonly<Record<string, number>>): PanelResult {
  return { panel: undefined, notes: [{ code, severity: 'fault', data }] }
}
