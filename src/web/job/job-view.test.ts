import { describe, expect, it } from 'vitest'
import type { Problem } from '#job'
import { cellOfProblem, problemAt } from './job-view.ts'

const problem = (pointer: string, code = 'job.choice', field = 'kind'): Problem => ({
  pointer,
  code,
  data: { field },
  severity: 'error',
})

const kindOf = (item: string) => ({ part: 'work', section: 'zones', item, key: 'kind' }) as const

describe('the problem of a cell', () => {
  it('is found at the cell, and at its item where the cell was never there', () => {
    const problems = [problem('/work/zones/a/kind'), problem('/work/zones/b', 'job.missing')]
    expect(problemAt({ problems }, kindOf('a'))).toBe(problems[0])
    expect(problemAt({ problems }, kindOf('b'))).toBe(problems[1])
    expect(problemAt({ problems }, { ...kindOf('b'), key: 'name' })).toBeUndefined()
    expect(problemAt({ problems }, kindOf('c'))).toBeUndefined()
  })

  it('leads back to the cell', () => {
    expect(cellOfProblem(problem('/work/zones/a/kind'))).toEqual(kindOf('a'))
    expect(cellOfProblem(problem('/work/zones/b', 'job.missing'))).toEqual(kindOf('b'))
    expect(cellOfProblem(problem('/work/zones/b/kind', 'job.missing'))).toEqual(kindOf('b'))
    expect(cellOfProblem(problem('/work/boat', 'job.missing'))).toEqual({
      part: 'work',
      section: 'boat',
      key: 'kind',
    })
    expect(cellOfProblem(problem('/work/zo~1nes/a~0/kind'))).toMatchObject({ section: 'zo/nes', item: 'a~' })
    for (const place of ['', '/log/a/kind', '/work', '/work/zones/a/kind/deeper'])
      expect(cellOfProblem(problem(place)), place).toBeUndefined()
  })
})
