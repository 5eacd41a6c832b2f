/** A colour for the words people order paint by, such as "dark blue" or "off-white". English words, as on the tin. */

type Hsl = readonly [hue: number, saturation: number, lightness: number]

/** Our own choice of a plain tone for each word. */
const tones: Readonly<Record<string, Hsl>> = {
  white: [60, 20, 96],
  ivory: [48, 45, 90],
  cream: [44, 60, 86],
  beige: [40, 34, 78],
  sand: [40, 38, 72],
  buff: [38, 45, 70],
  tan: [33, 36, 62],
  stone: [42, 12, 70],
  oyster: [45, 14, 80],
  grey: [205, 6, 60],
  silver: [205, 8, 74],
  slate: [210, 18, 40],
  charcoal: [210, 10, 26],
  black: [210, 12, 13],
  brown: [24, 38, 32],
  mahogany: [12, 48, 30],
  bronze: [36, 42, 40],
  red: [4, 68, 42],
  burgundy: [345, 58, 27],
  maroon: [350, 52, 25],
  crimson: [348, 70, 40],
  pink: [350, 55, 76],
  coral: [12, 66, 62],
  orange: [26, 78, 52],
  yellow: [48, 78, 58],
  gold: [42, 62, 48],
  green: [146, 40, 34],
  olive: [70, 32, 34],
  sage: [110, 14, 60],
  mint: [150, 38, 80],
  lime: [82, 55, 50],
  teal: [182, 48, 34],
  turquoise: [178, 50, 48],
  aqua: [184, 46, 62],
  blue: [212, 58, 42],
  sky: [204, 54, 70],
  navy: [216, 52, 20],
  indigo: [236, 44, 32],
  purple: [280, 34, 38],
  violet: [272, 36, 46],
}

const same: Readonly<Record<string, string>> = {
  gray: 'grey',
  bluish: 'blue',
  greenish: 'green',
  greyish: 'grey',
}

/** How a word before the tone moves its lightness and its strength. */
const shades: Readonly<Record<string, readonly [lighter: number, stronger: number]>> = {
  dark: [-0.45, 1],
  deep: [-0.4, 1.1],
  light: [0.5, 0.85],
  pale: [0.62, 0.7],
  soft: [0.35, 0.7],
  bright: [0.1, 1.3],
  off: [-0.06, 1.6],
  warm: [0, 1.2],
  cool: [0, 0.8],
}

/** The last tone named is the colour, a tone before it tinges it; undefined where no tone is named. */
export function paintColour(text: string): string | undefined {
  const words = text
    .toLowerCase()
    .split(/[^a-z]+/)
    .map((word) => same[word] ?? word)
  const named = words.filter((word) => Object.hasOwn(tones, word))
  const last = named.at(-1)
  if (last === undefined) return undefined
  const before = named.at(-2)
  const tone = before === undefined ? tones[last]! : tinged(tones[last]!, tones[before]!)
  return cssOf(words.reduce((so, word) => shaded(so, shades[word]), tone))
}

/** Keeps the colour, and goes half way to the other's strength and lightness: slate blue, olive green. */
const tinged = ([hue, s, l]: Hsl, [otherHue, s2, l2]: Hsl): Hsl =>
  s < 10 ? [otherHue, (s + s2) / 2, l] : [hue, (s + s2) / 2, (l + l2) / 2]

function shaded([hue, s, l]: Hsl, shade: readonly [number, number] | undefined): Hsl {
  if (!shade) return [hue, s, l]
  const [lighter, stronger] = shade
  const lightness = lighter < 0 ? l * (1 + lighter) : l + (97 - l) * lighter
  return [hue, Math.min(100, s * stronger), lightness]
}

const cssOf = ([hue, saturation, lightness]: Hsl): string => {
  const [s, l] = [saturation / 100, lightness / 100]
  const channel = (n: number): string => {
    const k = (n + hue / 30) % 12
    const value = l - s * Math.min(l, 1 - l) * Math.max(-1, Math.min(k - 3, 9 - k, 1))
    return Math.round(255 * value)
      .toString(16)
      .padStart(2, '0')
  }
  return `#${channel(0)}${channel(8)}${channel(4)}`
}

/** Ink or paper, whichever is read better on a colour: relative luminance after WCAG 2.2. */
export function lineOn(colour: string): '#15202b' | '#f8faf5' {
  const linear = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  const luminance = 0.2126 * linear[0]! + 0.7152 * linear[1]! + 0.0722 * linear[2]!
  return luminance > 0.18 ? '#15202b' : '#f8faf5'
}
