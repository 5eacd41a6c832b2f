/**
 * Drawings kept as files beside the code: shapes as JSON, rounded to a hundredth of a millimetre, a shape a line.
 * `UPDATE=1` writes them anew; a mismatch leaves a `*-changed.json` to look at.
 */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { expect } from 'vitest'

const rounded = (_key: string, value: unknown): unknown =>
  typeof value === 'number' ? Math.round(value * 100) / 100 + 0 : value

export function expectKeptDrawing(folder: URL, name: string, drawing: readonly unknown[]): void {
  const file = new URL(`${name}.json`, folder)
  const changed = new URL(`${name}-changed.json`, folder)
  const text = `[\n${drawing.map((shape) => JSON.stringify(shape, rounded)).join(',\n')}\n]\n`
  rmSync(changed, { force: true })
  if (process.env.UPDATE === '1') {
    mkdirSync(folder, { recursive: true })
    writeFileSync(file, text)
  }
  const kept = readFileSync(file, 'utf8')
  if (kept !== text) writeFileSync(changed, text)
  expect(JSON.parse(text)).toEqual(JSON.parse(kept))
}
