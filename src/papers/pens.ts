/** Lines by what they mean: width and dashes in millimetres. SOURCE: widths after ISO 128-2 and ISO 5457. */
export type PenRule = { readonly width: number; readonly dash?: readonly number[] }

export const pens = {
  /** Frame, visible outline, bar of a table head, total. */
  thick: { width: 0.7 },
  outline: { width: 0.5 },
  /** Edges of boxes, chine, panel edge. */
  medium: { width: 0.35 },
  /** Leaders, extension lines, stations. */
  thin: { width: 0.18 },
  hatch: { width: 0.13 },
  hidden: { width: 0.18, dash: [2, 1] },
  chain: { width: 0.18, dash: [5.8, 1, 1, 1] },
  waterline: { width: 0.35, dash: [4.2, 1, 0.6, 1] },
  ghost: { width: 0.18, dash: [0.4, 0.8] },
  /** Not tested, not known. */
  dotted: { width: 0.35, dash: [0.5, 0.7] },
  air: { width: 0.5 },
  dew: { width: 0.35, dash: [2, 1.1] },
  skin: { width: 0.35, dash: [4, 0.8, 0.8, 0.8] },
  /** The line under a figure says how sure it is: the more broken, the less is known. */
  measured: { width: 0.3 },
  sheet: { width: 0.3 },
  typical: { width: 0.3, dash: [1.5, 0.9] },
  assumed: { width: 0.35, dash: [0.5, 0.5] },
} as const satisfies Readonly<Record<string, PenRule>>

export type Pen = keyof typeof pens

/** Width and dashes of a pen, millimetres. */
export const penRule = (pen: Pen): PenRule => pens[pen]
