/** How a figure came about, worded: the plan's terms and parts as formulas and lines of the panel. */
import { partsIn, type Term, type Way, type WayPart } from '#plan'
import { labelOf, type Words, writeFormula } from '#words'
import type { FigureDetail, FigurePart } from '../parts/index.ts'

export type WaySpeaker = {
  readonly words: Words
  /** The same in the other system of units. */
  readonly other: Words
  readonly currency: string | undefined
}

/** With more parts than this only the nearest are listed, each with its own formula. */
const mostParts = 12

export function sayWay({ figure, parts, how }: Way, speaker: WaySpeaker): FigureDetail {
  const all = allParts(parts)
  return {
    other: sayOther(figure, speaker),
    formula: figure.term && sayTerm(figure.term, speaker),
    how: how && speaker.words.sentence(how.code, how.data),
    parts: (all.length <= mostParts ? all : parts)
      .filter((part) => part !== figure)
      .map((part) => sayPart(part, speaker)),
    source: figure.source === undefined ? undefined : saySource(figure.source),
  }
}

/** Each part and what stands behind it, once. */
export function allParts(parts: readonly WayPart[]): readonly WayPart[] {
  const found = new Map<string, WayPart>()
  const walk = (part: WayPart): void => {
    const key = JSON.stringify([part.name, part.of, part.value])
    if (found.has(key)) return
    found.set(key, part)
    if (part.term) for (const inner of partsIn(part.term)) walk(inner)
  }
  for (const part of parts) walk(part)
  return [...found.values()]
}

export const partLabel = ({ name, of }: WayPart): string =>
  [labelOf(`wayPart.${name}`), ...(of === undefined || of === '' ? [] : [of])].join(', ')

const sayPart = (part: WayPart, speaker: WaySpeaker): FigurePart => ({
  label: partLabel(part),
  text: figureOf(part, speaker),
  certainty: part.certainty,
  formula: part.term && sayTerm(part.term, speaker),
  source: part.source === undefined ? undefined : saySource(part.source),
})

const figureOf = ({ key, value }: Pick<WayPart, 'key' | 'value'>, { words, currency }: WaySpeaker): string =>
  words.figure(key, value, currency === undefined ? {} : { currency })

/** Nothing where both systems say the same. */
function sayOther(figure: WayPart, speaker: WaySpeaker): string | undefined {
  const text = figureOf(figure, { ...speaker, words: speaker.other })
  return text === figureOf(figure, speaker) ? undefined : text
}

const sayTerm = (term: Term, speaker: WaySpeaker): string =>
  writeFormula(term, {
    figure: (key, value) => figureOf({ key, value }, speaker),
    number: (value) => speaker.words.figure('count', value, {}, { digits: 6 }),
  })

const saySource = (source: string): string =>
  ['assumed', 'sheet', 'weather'].includes(source)
    ? labelOf(`waySource.${source}`)
    : source.charAt(0).toUpperCase() + source.slice(1)
