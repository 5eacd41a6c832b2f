import { expect, it } from 'vitest'
import { section, stacksOf } from '#papers'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../../../test/support/samples.ts'
import { bondFound, marksOf } from './bond-found.ts'

const raw = withCell(sampleRaw('open-powerboat'), 'work', ['layers', 'prime', 'sandBefore'], 'none')
const made = plan(planInput(projectRaw(raw), undefined))
const stack = stacksOf(made).find(({ zones }) => zones.some(({ id }) => id === 'foredeck'))!
const found = bondFound(
  made,
  stack.zones.map(({ id }) => id),
)

it('numbers what does not hold first, each once', () => {
  expect(found.map(({ number }) => number)).toEqual(found.map((_, at) => at + 1))
  expect(found[0]).toMatchObject({
    breaks: true,
    note: { code: 'buildup.notSanded', data: { layer: 'prime' } },
  })
  expect(found.findLastIndex(({ breaks }) => breaks)).toBe(found.filter(({ breaks }) => breaks).length - 1)
})

it('puts its number at the lower face of the layer that is put on', () => {
  const marks = marksOf(found, stack)
  const at = stack.layers.findIndex(({ layer }) => layer === 'prime')
  expect(marks[0]).toEqual({ number: 1, breaks: true, id: `new:${at}`, above: false })
  const { drawing } = section(stack, 50, 'readable', marks)
  const plain = section(stack, 50).drawing
  const added = drawing.slice(plain.length)
  const line = added.find(({ kind }) => kind === 'line')
  const text = added.find((shape) => shape.kind === 'text' && shape.text === '1')
  expect(line).toMatchObject({ ink: 'fault' })
  expect(text).toBeDefined()
})
