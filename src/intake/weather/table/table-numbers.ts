/** Figures as loggers write them: point or comma, a unit behind, a word where nothing was measured. */

export type WrittenNumber = { readonly value: number; readonly unit: string }

const nothing = /^(?:|-+|n\/?a|nan|null|none|err(?:or)?|invalid|\?+|\*+)$/i
const number = /^([+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d{1,3})?)\s*([^\d\s.,][^\d]{0,11})?$/i

/** NaN where nothing was measured; undefined when it is no figure. */
export function readNumber(written: string): WrittenNumber | undefined {
  const plain = written.replace('\u2212', '-').trim()
  if (nothing.test(plain)) return { value: Number.NaN, unit: '' }
  const parts = plain.length > 60 ? null : number.exec(plain)
  return parts === null
    ? undefined
    : { value: Number(parts[1]!.replace(',', '.')), unit: parts[2]?.trim() ?? '' }
}
