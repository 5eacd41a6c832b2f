/**
 * Colours on paper. Colour is kept for signal panels (ANSI Z535 pattern); all else is ink and greys, so that a
 * photocopy says the same.
 */
export const inks = {
  ink: '#15202B',
  ink2: '#44525D',
  hair: '#667578',
  rule: '#C9D3CC',
  /** Solid fill of an hour that is good for paint; its top line says it too. */
  go: '#8C979C',
  shade: '#E9EDEA',
  paper: '#FFFFFF',
  /** What has failed; on paper its waves and its cross say so. */
  fault: '#15202B',
  black: '#000000',
  danger: '#A6192E',
  warning: '#FF8200',
  caution: '#FFD100',
  notice: '#004B87',
} as const

export type Ink = keyof typeof inks
