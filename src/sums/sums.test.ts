import { describe, expect, it } from 'vitest'
import { runSum, type Sum, SumError, sumNamed, sums } from './index.ts'

const all: readonly Sum[] = Object.values(sums)

const exampleTexts = (sum: Sum, fields: 'all' | 'required') =>
  Object.fromEntries(
    sum.inputs
      .filter((field) => fields === 'all' || field.required)
      .map((field) => [field.name, field.example]),
  )

describe('the quick sums', () => {
  it('are ten, each under its own name', () => {
    expect(Object.keys(sums)).toHaveLength(10)
    for (const [name, sum] of Object.entries(sums)) expect(sum.id).toBe(name)
  })

  it('run on the examples of their inputs, all of them and the required ones alone', () => {
    for (const sum of all) {
      for (const fields of ['all', 'required'] as const) {
        const answer = runSum(sum.id, exampleTexts(sum, fields))
        expect(answer.results.length, sum.id).toBeGreaterThan(0)
        expect(answer.how.length, sum.id).toBeGreaterThan(0)
        expect(answer.sources.length, sum.id).toBeGreaterThan(0)
      }
    }
  })

  it('give finite figures under keys that are there once', () => {
    for (const sum of all) {
      const { results, how } = runSum(sum.id, exampleTexts(sum, 'all'))
      const keys = results.map(({ key }) => key)
      expect(new Set(keys).size, sum.id).toBe(keys.length)
      for (const { key, value } of results)
        if (typeof value === 'number') expect(Number.isFinite(value), `${sum.id} ${key}`).toBe(true)
      for (const { data } of how)
        for (const [key, value] of Object.entries(data))
          if (typeof value === 'number') expect(Number.isFinite(value), `${sum.id} ${key}`).toBe(true)
    }
  })

  it('say by name what is missing', () => {
    for (const sum of all)
      for (const { name } of sum.inputs.filter((field) => field.required)) {
        const texts = { ...exampleTexts(sum, 'all'), [name]: undefined }
        expect(fault(() => runSum(sum.id, texts))).toMatchObject({
          code: 'sums.missing',
          data: { field: name },
        })
      }
  })

  it('refuse an input they do not know, and a sum that is not there', () => {
    const texts = { ...exampleTexts(sums.wet, 'all'), colour: 'white' }
    expect(fault(() => runSum('wet', texts))).toMatchObject({
      code: 'sums.unknownInput',
      data: { field: 'colour' },
    })
    expect(fault(() => sumNamed('toString')).code).toBe('sums.unknownSum')
  })

  it('pass the fault of a text on with the name of its input', () => {
    expect(fault(() => runSum('dew', { air: '16', humidity: '70 %' }))).toMatchObject({
      code: 'units.missingUnit',
      data: { field: 'air', text: '16' },
    })
  })

  it('leave no trail of binary digits', () => {
    const discs = runSum('bevel', { hole: '50 mm', thickness: '6 mm', ratio: '12', plies: '6' }).results[0]
    expect(discs).toEqual({ key: 'discsMm', value: [74, 98, 122, 146, 170, 194], dimension: 'length' })
  })
})

function fault(work: () => unknown): SumError {
  try {
    work()
  } catch (error) {
    if (error instanceof SumError) return error
    throw error
  }
  throw new Error('no fault')
}
