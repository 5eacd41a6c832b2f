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

describe('the zones that are to be done', () => {
  const zonesOf = (more: Partial<NewJobAnswers>) => {
    const raw = newJob({ ...answers, ...more })
    expect(project(raw, { strict: true }).problems).toEqual([])
    return Object.keys(raw.work.zones ?? {})
  }

  it('are those that were named, each with what is on it now', () => {
    expect(zonesOf({ deck: false, transom: false, stripe: false })).toEqual([
      'topsides-port',
      'topsides-starboard',
    ])
    expect(
      zonesOf({ deck: true, topsides: false, transom: false, stripe: false, nonSkid: false }),
    ).not.toContain('non-skid')
    const { zones } = newJob({ ...answers, existing: 'gelcoat' }).work
    expect(zones?.transom).toMatchObject({ existing: 'gelcoat' })
    expect(zones?.['boot-stripe']).not.toHaveProperty('existing')
  })

  it('without any leave a job that is read without a problem', () => {
    const raw = newJob({ ...answers, deck: false, topsides: false, transom: false, stripe: false })
    expect(project(raw, { strict: true }).problems.map(({ code }) => code)).not.toContain('job.shape')
  })
})

it('the crew works as it said, the first as the lead', () => {
  const crew = [
    { name: 'Ana', days: 'Sat, Sun', from: '09:00', until: '17:00' },
    { name: 'Bo', days: 'Sat', from: '10:00', until: '15:00' },
  ]
  const { work, problems } = project(newJob({ ...answers, crew, colour: 'Off white', shade: 'medium' }), {
    strict: true,
  })
  expect(problems).toEqual([])
  expect(work.people.map(({ name, role }) => [name, role])).toEqual([
    ['Ana', 'lead'],
    ['Bo', 'helper'],
  ])
  expect(work.shifts).toHaveLength(2)
  expect(work.sheets.find(({ id }) => id === 'gloss')).toMatchObject({ colour: 'Off white', shade: 'medium' })
})
