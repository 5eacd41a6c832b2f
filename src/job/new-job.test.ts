import { describe, expect, it } from 'vitest'
import { type NewJobAnswers, newJob, parseJob, project, workFields, writeJson } from './index.ts'

const answers: NewJobAnswers = {
  name: 'Teal Wren, topsides',
  kind: 'open powerboat',
  length: '25 ft 4 in',
  beam: 'about 2.5 m',
  freeboard: '1.2 m',
  start: '2027-04-12',
  shelter: 'cover',
  timeZone: 'Europe/Stockholm',
  paint: 'two-part',
  deck: true,
}
const kinds = workFields.boat.fields.kind.choices

describe.each(kinds)('a new job for a boat of the kind %s', (kind) => {
  it.each(['one-part', 'two-part'] as const)(
    'has no problem with %s paint, with and without deck',
    (paint) => {
      for (const deck of [true, false]) {
        const raw = newJob({ ...answers, kind, paint, deck })
        const { problems, complete } = project(raw, { strict: true })
        expect(problems).toEqual([])
        expect(complete).toBe(true)
      }
    },
  )
})

it('keeps the answers as they were typed', () => {
  const { boat } = newJob(answers).work
  expect(boat).toMatchObject({ lengthOverall: '25 ft 4 in', beam: 'about 2.5 m' })
})

it('leaves out what was not answered', () => {
  const { job, place } = newJob(answers).work
  expect(job).not.toHaveProperty('launch')
  expect(place).toEqual({ shelter: 'cover', timeZone: 'Europe/Stockholm' })
})

it('every zone gets a layer', () => {
  const { work } = project(newJob(answers), { strict: true })
  const painted = new Set(work.layers.flatMap(({ zones }) => zones))
  expect(work.zones.map(({ id }) => id).filter((id) => !painted.has(id))).toEqual([])
})

it('is the same document after it was written and read', () => {
  const raw = newJob(answers)
  const read = parseJob(new TextEncoder().encode(writeJson(raw)), { name: 'new.json' })
  expect(read.document).toEqual(raw)
})

it('an answer that is no quantity is found when the document is read', () => {
  const { problems } = project(newJob({ ...answers, length: 'longish' }), { strict: true })
  expect(problems.map(({ pointer }) => pointer)).toEqual(['/work/boat/lengthOverall'])
})

it('answers that are no choice are found when the document is read, and never throw', () => {
  const odd = { ...answers, kind: 'canoe', paint: 'tar', shelter: 'tent' } as unknown as NewJobAnswers
  const { problems } = project(newJob(odd), { strict: true })
  expect(problems.map(({ pointer }) => pointer)).toEqual([
    '/work/boat/kind',
    '/work/place/shelter',
    '/work/sheets/gloss/family',
  ])
  expect(() => newJob({ ...odd, kind: 'constructor' } as unknown as NewJobAnswers)).not.toThrow()
})
