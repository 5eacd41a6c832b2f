/**
 * Hatch is chemistry: the direction tells the family, the density the kind (primer wide, finish and tie coat close,
 * filler with dots). Gaps in millimetres, angles in degrees as seen, 45 rising to the right.
 */
export const hatchFamilies = ['polyester', 'epoxy', 'twoPart', 'onePart', 'acrylic'] as const
export type HatchFamily = (typeof hatchFamilies)[number]
export type HatchKind = 'primer' | 'finish' | 'filler'

export type HatchName = `${HatchFamily}-${HatchKind}` | 'glass' | 'risky' | 'wait' | 'dew'

export type LineHatch = {
  readonly kind: 'lines'
  readonly angles: readonly number[]
  readonly gap: number
  readonly dots: boolean
}
export type HatchRule = LineHatch | { readonly kind: 'weave' }

const angles: Readonly<Record<HatchFamily, readonly number[]>> = {
  polyester: [135],
  epoxy: [45],
  twoPart: [90],
  onePart: [0],
  acrylic: [45, 135],
}
const gaps: Readonly<Record<HatchKind, number>> = { primer: 1.85, finish: 1.2, filler: 1.85 }

/** How a hatch is drawn: its lines, their angle and distance. */
export function hatchRule(name: HatchName): HatchRule {
  if (name === 'glass') return { kind: 'weave' }
  if (name === 'risky') return lines([45], 1)
  if (name === 'wait' || name === 'dew') return lines([45], 2)
  const [family, kind] = name.split('-') as [HatchFamily, HatchKind]
  return { ...lines(angles[family], gaps[kind]), dots: kind === 'filler' }
}

const lines = (at: readonly number[], gap: number): LineHatch => ({
  kind: 'lines',
  angles: at,
  gap,
  dots: false,
})

const familyOf: Readonly<Record<string, HatchFamily>> = {
  polyester: 'polyester',
  vinylester: 'polyester',
  gelcoat: 'polyester',
  epoxy: 'epoxy',
  'two-part polyurethane': 'twoPart',
  'two-part': 'twoPart',
  'one-part': 'onePart',
  acrylic: 'acrylic',
}

const kindOf: Readonly<Record<string, HatchKind>> = {
  filler: 'filler',
  fairing: 'filler',
  'laminating resin': 'primer',
  primer: 'primer',
  'tie coat': 'finish',
  finish: 'finish',
  'non-skid': 'finish',
}

/** Undefined for a family that nobody knows: it is left without hatch, with a dotted outline. */
export function hatchFor(family: string, role: string): HatchName | undefined {
  const known = familyOf[family]
  return known && `${known}-${kindOf[role] ?? 'primer'}`
}
