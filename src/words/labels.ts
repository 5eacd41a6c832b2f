/** Plain words for kinds, headings and columns: `label('heading.days')`. */

import { boatScreenLabels } from './boat-screen-labels.ts'
import { bondLabels } from './bond-words.ts'
import { daysScreenLabels } from './days-screen-labels.ts'
import { deckScreenLabels } from './deck-screen-words.ts'
import { fieldLabels, sectionLabels } from './field-labels.ts'
import { fieldsLabels } from './fields-labels.ts'
import { frameLabels } from './frame-labels.ts'
import { jobsLabels } from './jobs-labels.ts'
import { mishapLabels } from './mishap-words.ts'
import { paperLabels } from './paper-labels.ts'
import { papersScreenLabels } from './papers-screen-labels.ts'
import { partLabels } from './part-labels.ts'
import { planLabels } from './plan-labels.ts'
import { protectionLabels } from './protection-labels.ts'
import { quantityKey } from './quantity-key.ts'
import { sheetsLabels } from './sheets-labels.ts'
import { shortcutLabels } from './shortcut-words.ts'
import { sumLabels } from './sum-labels.ts'
import { sumScreenLabels } from './sum-screen-words.ts'
import { todayScreenLabels } from './today-screen-labels.ts'
import { wayLabels } from './way-labels.ts'
import { whatNowLabels } from './what-now-words.ts'

/** Every table of labels, by its name. */
export const labelTables: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  boatScreenLabels,
  deckScreenLabels,
  fieldLabels,
  fieldsLabels,
  sectionLabels,
  frameLabels,
  jobsLabels,
  mishapLabels,
  paperLabels,
  partLabels,
  papersScreenLabels,
  planLabels,
  protectionLabels,
  sheetsLabels,
  bondLabels,
  shortcutLabels,
  sumLabels,
  sumScreenLabels,
  todayScreenLabels,
  daysScreenLabels,
  wayLabels,
  whatNowLabels,
}

/** Word by key. A test keeps a key from standing in two tables. */
export const labels: Readonly<Record<string, string>> = Object.assign({}, ...Object.values(labelTables))

/**
 * The word for a key; without one, what stands after its first dot: spelled out when it is a program's name
 * (`clock.dryToSand` is `Dry to sand`), else as it stands.
 */
export function labelOf(key: string): string {
  return Object.hasOwn(labels, key) ? (labels[key] ?? key) : spelledOut(key.slice(key.indexOf('.') + 1))
}

function spelledOut(name: string): string {
  if (!/^[a-z][a-zA-Z0-9.-]*$/.test(name)) return name
  const suffix = quantityKey(name)?.suffix.length ?? 0
  const bare = suffix < name.length ? name.slice(0, name.length - suffix) : name
  const words = bare
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replace(/[-.]/g, ' ')
    .toLowerCase()
  return words.charAt(0).toUpperCase() + words.slice(1)
}
