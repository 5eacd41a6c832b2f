/** Films that are laid too thick, and colours that show what lies below. */
import type { Fault } from './fault.ts'
import { type Coat, fit } from './material.ts'
import type { CoatPractice, HidingRule } from './rule.ts'
import type { StackLayer } from './stack.ts'

/** What is usual for a coat of this kind: the row that fits most closely. */
export function practiceOf(rows: readonly CoatPractice[], coat: Coat): CoatPractice | undefined {
  const fitting = rows.map((row) => ({ row, close: fit(row.of, coat) })).filter(({ close }) => close >= 0)
  return fitting.sort((a, b) => b.close - a.close)[0]?.row
}

/** Films are compared with a grain of salt: figures of sheets are rounded. */
const ROUNDED = 1.001

export function filmFaults(rows: readonly CoatPractice[], layer: StackLayer): readonly Fault[] {
  const practice = practiceOf(rows, layer)
  const { dryFilmM, coats, id } = layer
  if (!practice || dryFilmM === undefined) return []
  const { filmMostM, buildMostM, source } = practice
  const about = { layer: id, under: id, source }
  const each: readonly Fault[] =
    filmMostM !== undefined && dryFilmM > filmMostM * ROUNDED
      ? [{ ...about, kind: 'film over', filmM: dryFilmM, mostM: filmMostM }]
      : []
  const all = dryFilmM * coats
  return buildMostM !== undefined && all > buildMostM * ROUNDED
    ? [...each, { ...about, kind: 'build over', filmM: all, mostM: buildMostM }]
    : each
}

/** Fewer coats than the colour takes; only of finishes whose colour is known. */
export function hidingFaults(rows: readonly HidingRule[], layer: StackLayer): readonly Fault[] {
  if (layer.role !== 'finish') return []
  const rule = hidingOf(rows, layer)
  if (!rule || layer.coats >= rule.coats) return []
  return [
    {
      kind: 'colour shows',
      layer: layer.id,
      under: layer.id,
      coats: layer.coats,
      wanted: rule.coats,
      over: rule.over,
      source: rule.source,
    },
  ]
}

/** The rule of a colour: the first whose words stand in it, with its shade where it names one. */
export const hidingOf = (
  rows: readonly HidingRule[],
  { colour, shade }: { readonly colour: string; readonly shade?: string },
): HidingRule | undefined => {
  const words = colour
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word !== '')
  return rows.find(
    (row) =>
      row.colours.some((one) => words.includes(one)) && (row.shade === undefined || row.shade === shade),
  )
}
