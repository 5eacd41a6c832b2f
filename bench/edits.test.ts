/** The gate that does not hang on the machine: how many stages run again for forty seeded edits of the big sample. */
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { createPlanner } from '#plan'
import { planInput, projectRaw, sampleRaw, sampleWeather } from '../test/support/samples.ts'
import { seededEdits, withEdit } from './edits.mjs'

const baseline = JSON.parse(readFileSync(new URL('./baseline.json', import.meta.url), 'utf8'))

it('an edit runs no more stages than it did', () => {
  const weather = sampleWeather('open-powerboat')
  const planner = createPlanner()
  let raw = sampleRaw('open-powerboat')
  let projected = projectRaw(raw)
  planner.plan(planInput(projected, weather))
  let ran = 0
  for (const edit of seededEdits(raw as unknown as Parameters<typeof seededEdits>[0], {
    count: 40,
    seed: 20270412,
  })) {
    raw = withEdit(raw, edit)
    projected = projectRaw(raw, projected)
    ran += planner.plan(planInput(projected, weather)).trace.filter((entry) => entry.ran).length
  }
  expect(ran).toBeLessThanOrEqual(baseline.stagesOfFortyEdits)
}, 60_000)
