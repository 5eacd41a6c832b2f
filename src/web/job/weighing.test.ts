import { expect, it } from 'vitest'
import type { Candidate, Effect, Question } from '../worker/messages.ts'
import { openWeighing } from './weighing.ts'

const candidate = (key: string): Candidate => ({
  place: { part: 'work', section: 'boat', key },
  low: '1 m',
  high: '2 m',
})
const effects: Readonly<Record<string, Effect>> = {
  beam: { days: 0, litres: 1 },
  draft: { days: 2, litres: 0 },
  depth: { days: 0, litres: 0 },
}

const worker = (fails?: string) => {
  const asked: string[] = []
  const ask = async (question: Question): Promise<never> => {
    const key = question.kind === 'weigh' ? question.candidate.place.key : question.kind
    asked.push(key)
    if (key === fails) throw new Error('worker: gone')
    return (question.kind === 'weigh' ? effects[key] : Object.keys(effects).map(candidate)) as never
  }
  return { asked, weighing: openWeighing({ ask, nowMs: () => 0 }) }
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 5))
const keysOf = ({ weighing }: ReturnType<typeof worker>) =>
  weighing.now().list.map((one) => one.candidate.place.key)

it('tries one guess after the other, and puts those that move anything in order', async () => {
  const one = worker()
  let heard = 0
  one.weighing.listen(() => heard++)
  one.weighing.start()
  one.weighing.start()
  await settled()
  expect(one.asked).toEqual(['candidates', 'beam', 'draft', 'depth'])
  expect(keysOf(one)).toEqual(['draft', 'beam'])
  expect(one.weighing.now().share).toBe(1)
  expect(heard).toBeGreaterThan(0)
  one.weighing.start()
  await settled()
  expect(one.asked).toHaveLength(8)
})

it('ends with what it has when the worker fails, and asks no more once it is closed', async () => {
  const failing = worker('draft')
  failing.weighing.start()
  await settled()
  expect(keysOf(failing)).toEqual(['beam'])
  expect(failing.weighing.now().share).toBe(1)
  const closed = worker()
  closed.weighing.start()
  closed.weighing.close()
  await settled()
  expect(closed.asked).toEqual(['candidates'])
})
