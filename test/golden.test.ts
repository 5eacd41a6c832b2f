/**
 * The plans of the sample jobs, kept as files: every engine must come to the same calendar to the minute and the same
 * figures to nine digits. `UPDATE=1` writes them anew; a mismatch leaves a `*-changed.json` to look at.
 */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Plan, plan } from '#plan'
import { type SampleName, sampleInput } from './support/samples.ts'

const folder = new URL('./golden/', import.meta.url)
const names: readonly SampleName[] = ['open-powerboat', 'deck-only', 'cruiser-topsides']

/** What a person would notice if it moved. */
const kept = (of: Plan) => ({
  stamp: { work: of.stamp.work, weather: of.stamp.weather, catalogue: of.stamp.catalogue },
  zones: [...of.surfaces.zones, ...of.marks.zones].map((zone) => [zone.id, zone.areaM2, zone.perimeterM]),
  layers: of.quantities.layers.map((layer) => [layer.id, layer.mixedM3, layer.thinnerM3]),
  steps: of.days.placed.map((one) => [one.step, one.startMinute, one.endMinute, one.verdict]),
  pours: of.pours.pours.map((pour) => [
    pour.step,
    pour.nr,
    pour.readyM3,
    pour.mixAtMinute,
    pour.useUntilMinute ?? null,
  ]),
  stores: of.stores.items.map((item) => [
    item.sheet,
    item.needM3,
    ...item.buy.map((one) => `${one.count} × ${one.pack}`),
  ]),
  consumables: of.stores.consumables.map((item) => [item.id, item.sheet ?? '', item.amount]),
  money: of.money ? [of.money.netCoins, of.money.taxCoins, of.money.totalCoins] : [],
  notes: of.notes.map((note) => note.code),
  cautions: of.cautions.cautions.map((caution) => [caution.code, caution.steps.length]),
})

/** Nine significant digits: sin, exp and pow differ in the last bit between engines. */
const rounded = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_key, part) =>
      typeof part === 'number' && !Number.isInteger(part) ? Number(part.toPrecision(9)) : part,
    ),
  )

describe.each(names)('the plan of %s', (name) => {
  it('is the one that is kept', () => {
    const file = new URL(`${name}.json`, folder)
    const changed = new URL(`${name}-changed.json`, folder)
    const text = `${JSON.stringify(rounded(kept(plan(sampleInput(name)))), null, 1)}\n`
    rmSync(changed, { force: true })
    if (process.env.UPDATE === '1') {
      mkdirSync(folder, { recursive: true })
      writeFileSync(file, text)
    }
    if (readFileSync(file, 'utf8') !== text) writeFileSync(changed, text)
    expect(JSON.parse(text)).toEqual(JSON.parse(readFileSync(file, 'utf8')))
  })
})
