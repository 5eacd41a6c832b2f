/** A sum is as sure as its weakest part. */
import type { Certainty } from '#core/note'

const order: readonly Certainty[] = ['worked', 'measured', 'sheet', 'typical', 'assumed']

export const weakest = (parts: readonly Certainty[]): Certainty =>
  order[Math.max(0, ...parts.map((part) => order.indexOf(part)))] ?? 'assumed'
