/**
 * Steps of type on paper: face, size in points, line height in millimetres. Titles, labels and units are lettering
 * (one stroke width, as ISO 3098); sentences and figures are text.
 */
export const faces = ['text', 'strong', 'lettering'] as const
export type Face = (typeof faces)[number]

export type TypeStyle = {
  readonly face: Face
  readonly sizePt: number
  readonly lead: number
  /** Extra space between letters, in points. */
  readonly trackingPt?: number
}

export const typeStyles = {
  clock: { face: 'strong', sizePt: 20, lead: 8 },
  sheet: { face: 'lettering', sizePt: 19, lead: 8 },
  part: { face: 'lettering', sizePt: 13, lead: 5.8 },
  figure: { face: 'strong', sizePt: 13, lead: 5.8 },
  unit: { face: 'lettering', sizePt: 10.5, lead: 4.6 },
  say: { face: 'text', sizePt: 11.5, lead: 5.4 },
  body: { face: 'text', sizePt: 9.5, lead: 4.3 },
  strong: { face: 'strong', sizePt: 9.5, lead: 4.3 },
  label: { face: 'lettering', sizePt: 10, lead: 4.3 },
  small: { face: 'text', sizePt: 8.5, lead: 3.9 },
  smallStrong: { face: 'strong', sizePt: 8.5, lead: 3.9 },
  caption: { face: 'lettering', sizePt: 8.5, lead: 3.8, trackingPt: 0.2 },
  fine: { face: 'text', sizePt: 8, lead: 3.5 },
  signal: { face: 'strong', sizePt: 10.5, lead: 5, trackingPt: 0.4 },
  grid: { face: 'lettering', sizePt: 7.5, lead: 3.2 },
} as const satisfies Readonly<Record<string, TypeStyle>>

export type StyleName = keyof typeof typeStyles

/** Face, size and lead of a step of type. */
export const typeStyle = (name: StyleName): TypeStyle => typeStyles[name]

/** Millimetres of one point. */
export const mmPerPt = 25.4 / 72

/** Height of a capital above the baseline, as a share of the size: both faces lie close to it. */
export const capShare = 0.68

export const capHeight = (name: StyleName): number => typeStyle(name).sizePt * mmPerPt * capShare
