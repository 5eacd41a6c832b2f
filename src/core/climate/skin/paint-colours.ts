/** How much of the sun a colour takes in, by what it is called. */

export type Shade = 'light' | 'medium' | 'dark'

export type PaintColour = {
  /** Names it goes by. */
  readonly words: readonly string[]
  /** Absent where the name alone tells how dark it is. */
  readonly shade?: Shade
  /** Share of the sun's light, seen and unseen, that is taken in, 0..1. */
  readonly absorptance: number
  readonly source: string
}

/** Share of heat that paints of any colour take in and send out, 0..1. Source: ASTM E1980-11; 0.83 to 0.90 measured. */
export const paintEmittance = 0.9

const code = 'Australian building code 2019, values by ASTM E903'
const measured = 'measured paints, spacecraft thermal design tables'
const between = 'assumed, by the colours beside it'

const hue = (
  words: readonly string[],
  shades: Readonly<Record<Shade, readonly [number, string]>>,
): readonly PaintColour[] =>
  (['light', 'medium', 'dark'] as const).map((shade) => {
    const [absorptance, source] = shades[shade]
    return { words, shade, absorptance, source }
  })

const deep = { medium: [0.75, code], dark: [0.9, between] } as const

/** The more special name first. How light a colour looks says little: half of the sun is not seen. */
export const paintColours: readonly PaintColour[] = [
  { words: ['off-white', 'off white', 'ivory'], absorptance: 0.35, source: code },
  { words: ['white'], absorptance: 0.26, source: measured },
  { words: ['cream'], absorptance: 0.3, source: code },
  { words: ['black'], absorptance: 0.95, source: measured },
  { words: ['navy', 'slate', 'charcoal', 'brown'], absorptance: 0.9, source: code },
  ...hue(['grey', 'gray'], { light: [0.45, code], medium: [0.7, between], dark: [0.9, code] }),
  ...hue(['blue'], { light: [0.5, between], medium: [0.75, between], dark: [0.9, between] }),
  ...hue(['green', 'teal', 'turquoise'], { light: [0.5, between], ...deep }),
  ...hue(['red', 'orange', 'maroon'], { light: [0.6, between], ...deep }),
  ...hue(['yellow', 'buff', 'sand', 'beige', 'tan'], {
    light: [0.5, between],
    medium: [0.6, code],
    dark: [0.7, between],
  }),
]

/** Classes of the Australian sustainability index: light to 0.475, dark from 0.70; each near its middle. */
const ofShade: Readonly<Record<Shade, number>> = { light: 0.35, medium: 0.6, dark: 0.85 }

const shadeWords: Readonly<Record<string, Shade>> = {
  light: 'light',
  pale: 'light',
  dark: 'dark',
  deep: 'dark',
  midnight: 'dark',
}

/**
 * Absorptance of a colour as people name it: `pale teal`, `Signal red`, `dark blue`.
 * @param of.colour in any case; what it says of its shade comes before `of.shade`, and without either it is medium.
 * @returns undefined where neither name nor shade says anything.
 */
export function absorptanceOf(of: {
  readonly colour: string
  readonly shade: Shade | undefined
}): number | undefined {
  const text = of.colour.toLowerCase()
  const has = (word: string) => new RegExp(`\\b${word}\\b`).test(text)
  const named = Object.keys(shadeWords).find(has)
  const shade = named === undefined ? of.shade : shadeWords[named]
  const found = paintColours.find(
    (colour) =>
      colour.words.some(has) && (colour.shade === undefined || colour.shade === (shade ?? 'medium')),
  )
  return found?.absorptance ?? (shade && ofShade[shade])
}
