import { describe, expect, it } from 'vitest'
import { project } from '#job'
import { type Answers, documentOf, firstAnswers, wrongAnswers } from './answers.ts'

const answers: Answers = {
  ...firstAnswers({ today: '2027-04-12', timeZone: 'Europe/Oslo' }),
  boatName: 'Teal Wren',
  length: '7.7 m',
  beam: '2.5 m',
  freeboard: '1.1 m',
}
const wrong = (more: Partial<Answers>) => [
  ...wrongAnswers(documentOf({ ...answers, ...more }, 'Lead')).keys(),
]

describe('the twelve answers', () => {
  it('make a job without a problem, named after its boat', () => {
    const raw = documentOf(answers, 'Lead')
    expect(wrong({})).toEqual([])
    expect(project(raw, { strict: true }).work.job).toMatchObject({
      name: 'Teal Wren',
      boatName: 'Teal Wren',
    })
  })

  it.each<[string, Partial<Answers>]>([
    ['name', { boatName: ' ', name: '' }],
    ['length', { length: 'long' }],
    ['length', { length: '7,700 m' }],
    ['beam', { beam: '-2 m' }],
    ['beam', { beam: '' }],
    ['freeboard', { freeboard: '9 kg' }],
    ['start', { start: '' }],
    ['latitude', { latitude: '99°' }],
    ['timeZone', { timeZone: 'Mars/Olympus' }],
    [
      'crew.1.days',
      { crew: [answers.crew[0]!, { name: 'Bo', days: 'Someday', from: '08:00', until: '12:00' }] },
    ],
  ])('that are wrong are told at the field %s', (field, more) => {
    expect(wrong(more)).toContain(field)
  })
})
