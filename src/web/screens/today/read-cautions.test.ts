import { describe, expect, it } from 'vitest'
import type { Caution } from '#plan'
import { type CautionShelf, cautionKey, readCautions, writeCautions } from './read-cautions.ts'

function shelf(): CautionShelf & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>()
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
  }
}
const day = { job: 'teal', date: '2027-05-10' }
const caution = (data: Caution['data']): Caution => ({
  ...{ code: 'hazard.heat', severity: 'warning', protection: [], source: '', steps: [] },
  data,
})

describe('cautions that were read', () => {
  it('stay so for this job and this day', () => {
    const kept = shelf()
    writeCautions(kept, day, new Set(['a', 'b']))
    expect([...readCautions(kept, day)]).toEqual(['a', 'b'])
    expect(readCautions(kept, { ...day, date: '2027-05-11' }).size).toBe(0)
    expect(readCautions(kept, { ...day, job: 'grey' }).size).toBe(0)
  })
  it('are others once they say something else', () => {
    expect(cautionKey(caution({ airC: 28 }))).toBe(cautionKey(caution({ airC: 28 })))
    expect(cautionKey(caution({ airC: 28 }))).not.toBe(cautionKey(caution({ airC: 32 })))
  })
  it('are none where the browser keeps nothing or something else', () => {
    const kept = shelf()
    for (const text of ['null', '[]', '{"date":"2027-05-10","read":{"a":1}}', 'x']) {
      kept.texts.set('hardstand.cautions.teal', text)
      expect(readCautions(kept, day).size).toBe(0)
    }
    expect(readCautions(undefined, day).size).toBe(0)
    writeCautions(undefined, day, new Set())
  })
})
