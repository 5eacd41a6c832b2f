/** Suggested build-ups: for each group of zones the three best in figures, or why there is none. */
import { HOURS_A_YEAR, noteText, sandingName, suggestionText } from '#papers'
import type { Plan, Suggestions, ToldMiss, ZoneSuggestions } from '#plan'
import type { Words } from '#words'
import { allZones } from './boat-view.ts'
import { WIDTH, wrap } from './table.ts'

export type Suggested = { readonly plan: Plan; readonly found: Suggestions; readonly currency?: string }

/** A sentence set in from the edge, its later lines a little more. */
const setIn = (text: string, spaces: number): readonly string[] =>
  wrap(text, '  ', WIDTH - spaces).map((line) => `${' '.repeat(spaces)}${line}`)

type Suggestion = ZoneSuggestions['suggestions'][number]

const nameIn =
  ({ plan }: Suggested) =>
  (id: string): string =>
    plan.buildUps.sheets.find((sheet) => sheet.id === id)?.name ?? id

export function suggestLines(of: Suggested, words: Words): readonly string[] {
  const names = (ids: readonly string[]) => ids.map(nameIn(of)).join(', ')
  const said = (code: string, ids: readonly string[]) =>
    ids.length === 0 ? [] : ['', ...wrap(words.sentence(code, { names: names(ids) }))]
  return [
    ...of.found.groups.flatMap((group) => groupLines(group, of, words)),
    ...said('suggest.unpriced', of.found.unpriced),
    ...said('suggest.unspread', of.found.unspread),
  ]
}

function groupLines(group: ZoneSuggestions, of: Suggested, words: Words): readonly string[] {
  const zones = group.zones.map((id) => allZones(of.plan).find((zone) => zone.id === id)?.name ?? id)
  return [
    '',
    ...setIn(
      words.sentence('suggest.heading', {
        zones: zones.join(', '),
        areaM2: group.areaM2,
        oldSurface: group.existing,
      }),
      0,
    ),
    ...group.suggestions.flatMap((one, at) => suggestionLines({ one, nr: at + 1, group }, of, words)),
    ...noneLines(group, of, words),
    ...group.shortcuts.flatMap((miss) => missLines('suggest.shortcut', miss, of, words)),
  ]
}

type Numbered = { readonly one: Suggestion; readonly nr: number; readonly group: ZoneSuggestions }

function suggestionLines({ one, nr, group }: Numbered, of: Suggested, words: Words): readonly string[] {
  const { plan, currency } = of
  const text = suggestionText(one, {
    plan,
    areaM2: group.areaM2,
    words,
    ...(currency === undefined ? {} : { currency }),
  })
  return [
    ...setIn(`${nr}. ${text.figures}`, 2),
    ...(text.strip ? [`     ${text.strip}`] : []),
    ...text.only.flatMap((line) => wrap(line, '  ', WIDTH - 5).map((part) => `     ${part}`)),
    ...text.layers.flatMap((layer) => setIn(layer, 5)),
  ]
}

function noneLines({ none }: ZoneSuggestions, of: Suggested, words: Words): readonly string[] {
  if (!none) return []
  if (none.why === 'no finish') return [`  ${words.sentence('suggest.noFinish')}`]
  return none.miss
    ? missLines('suggest.noWay', none.miss, of, words)
    : [`  ${words.sentence('suggest.nothing')}`]
}

function missLines(code: string, miss: ToldMiss, of: Suggested, words: Words): readonly string[] {
  const names = miss.stack.layers.map(({ id }) => nameIn(of)(id)).join(', ')
  return [
    ...setIn(words.sentence(code, { names }), 2),
    ...miss.notes.flatMap((note) => setIn(noteText(of.plan, note, words), 5)),
  ]
}

export const suggestJson = (of: Suggested) => ({
  suggestions: of.found.groups.map((group) => ({
    zones: group.zones,
    existing: group.existing,
    areaM2: group.areaM2,
    wish: group.wish,
    builds: group.suggestions.map((one) => buildJson(one, group, of)),
    shortcuts: group.shortcuts.map(missJson),
    ...(group.none
      ? { none: { why: group.none.why, ...(group.none.miss ? { miss: missJson(group.none.miss) } : {}) } }
      : {}),
  })),
  unpriced: of.found.unpriced,
  unspread: of.found.unspread,
})

function buildJson(
  { worth, best, strip, stripHours, steps, only }: Suggestion,
  group: ZoneSuggestions,
  of: Suggested,
) {
  const { coins, unpricedMl, days, lifeHours } = worth
  return {
    best,
    costCoins: coins,
    unpricedMl,
    days,
    lifeYears: lifeHours / HOURS_A_YEAR,
    ...(strip ? { strip: strip.id, stripPersonHours: stripHours } : {}),
    ...(only.length > 0 ? { only: only.map(({ data }) => data.bondOnly) } : {}),
    layers: steps.map(({ offer, layer }) => ({
      sheet: offer.id,
      name: nameIn(of)(offer.id),
      family: layer.family,
      role: layer.role,
      coats: layer.coats,
      sandBefore: sandingName(layer.before),
      sandBetween: sandingName(layer.between),
      mixedL: offer.litresPerM2 * group.areaM2 * layer.coats,
    })),
  }
}

const missJson = ({ stack, notes }: ToldMiss) => ({ sheets: stack.layers.map(({ id }) => id), notes })
