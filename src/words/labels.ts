/** Plain words for kinds, families and headings: `label('protection.gloves')`. */
import { protectionLabels } from './protection-labels.ts'

const labels: Readonly<Record<string, string>> = { ...protectionLabels }

/**
 * The word for a key; without one the last part of the key, spelled out: `step.dryToSand` is `Dry to sand`.
 */
export function labelOf(key: string): string {
  return Object.hasOwn(labels, key) ? (labels[key] ?? key) : spelledOut(key)
}

function spelledOut(key: string): string {
  const last = key.slice(key.lastIndexOf('.') + 1)
  const words = last
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replace(/[-_]/g, ' ')
    .toLowerCase()
  return words.charAt(0).toUpperCase() + words.slice(1)
}
