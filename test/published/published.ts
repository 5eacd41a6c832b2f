// Runs the rows of a published source against our functions: one JSON file a source, with its citation,
// and in each file groups of rows that share a unit and one tolerance with its reason.
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

export type Given = Readonly<Record<string, number>>

export type PublishedRow = {
  readonly given: Given
  readonly expected: number
  /** T read in the text, C computed from its formula, M from memory; T+C read and recomputed. */
  readonly sure: string
  readonly cited?: string
  /** The source prints something else here, and why its answer is not the one expected. */
  readonly trap?: string
}

export type PublishedCheck = {
  readonly of: string
  readonly unit: string
  readonly tolerance: number
  readonly toleranceReason: string
  readonly rows: readonly PublishedRow[]
}

export type PublishedSource = {
  readonly source: string
  readonly citation: string
  readonly checks: readonly PublishedCheck[]
}

/** Reads `test/published/<name>.json`. */
export function published(name: string): PublishedSource {
  return JSON.parse(readFileSync(new URL(`./${name}.json`, import.meta.url), 'utf8'))
}

/** One given figure by name; a row that lacks it fails loudly instead of giving NaN. */
export function figure(given: Given, name: string): number {
  const value = given[name]
  if (value === undefined)
    throw new Error(`published row: figure missing, got ${Object.keys(given)}, expected ${name}`)
  return value
}

/** Tests every row of a source; `answers` holds, by the check's `of`, how we work the figure out in its unit. */
export function checkPublished(
  name: string,
  answers: Readonly<Record<string, (given: Given) => number>>,
): void {
  const source = published(name)
  describe(source.source, () => {
    for (const check of source.checks) checkRows(check, answers[check.of])
  })
}

function checkRows(check: PublishedCheck, answer: ((given: Given) => number) | undefined): void {
  it(`${check.of} meets ${check.rows.length} published rows within ${check.tolerance} ${check.unit}`, () => {
    expect(answer, `no answer for ${check.of}`).toBeDefined()
    expect(check.toleranceReason.length).toBeGreaterThan(0)
    for (const row of check.rows) {
      const got = answer!(row.given)
      const off = Math.abs(got - row.expected)
      expect(off, `${JSON.stringify(row)}: got ${got}`).toBeLessThanOrEqual(check.tolerance)
    }
  })
}
