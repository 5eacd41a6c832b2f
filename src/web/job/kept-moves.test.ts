import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import { MovedPlan } from '../screens/moved-plan.tsx'
import type { Moved, MovedStep, Named } from './how-it-moved.ts'
import { type MoveShelf, readMoves, writeMoves } from './kept-moves.ts'
import type { PlanMove } from './plan-move.ts'

const shelfOf = (): MoveShelf & { readonly texts: Map<string, string> } => {
  const texts = new Map<string, string>()
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
  }
}

const place = 'hardstand.moves.teal'

const named = (step: string): Named => ({
  step,
  text: { code: 'step.sand', data: { zone: 'Foredeck', coat: 1 } },
})
const step = (at: number): MovedStep => ({ ...named(`step-${at}`), fromMinute: at, toMinute: at + 60 })

const moveOf = (atMs: number, some: Partial<Moved> = {}): PlanMove => ({
  moved: {
    launch: { fromMinute: 10, toMinute: 20 },
    steps: [step(1), { ...named('new'), toMinute: 5 }],
    lost: [named('late')],
    gone: [named('dropped')],
    ...some,
  },
  number: 7,
  atMs,
  by: 'edit',
})

const none = { steps: 0, lost: 0, gone: 0 }
const withMore = (move: PlanMove, more = none): PlanMove => ({ ...move, moved: { ...move.moved, more } })

describe('what the last plans moved', () => {
  it('is there after a reload, for this job alone, and not a month later', () => {
    const shelf = shelfOf()
    writeMoves(shelf, 'teal', [moveOf(2000), moveOf(1000)])
    expect(readMoves(shelf, 'teal', 3000)).toEqual([withMore(moveOf(2000)), withMore(moveOf(1000))])
    expect(readMoves(shelf, 'grey', 3000)).toEqual([])
    expect(readMoves(shelf, 'teal', 1500 + 30 * 24 * 3_600_000)).toEqual([withMore(moveOf(2000))])
  })

  it('takes little room however much moved, and counts what is not kept', () => {
    const shelf = shelfOf()
    const many = Array.from({ length: 900 }, (_, at) => step(at))
    const move = moveOf(1, { steps: many, lost: many, gone: many })
    writeMoves(shelf, 'teal', Array(9).fill(move))
    expect(shelf.texts.get(place)!.length).toBeLessThan(30_000)
    const read = readMoves(shelf, 'teal', 2)
    expect(read).toHaveLength(4)
    expect(read[0]!.moved.more).toEqual({ steps: 888, lost: 888, gone: 888 })
    // Kept once more, they are as many as before.
    writeMoves(shelf, 'teal', read)
    expect(readMoves(shelf, 'teal', 2)).toEqual(read)

    const words = createWords({ locale: 'en-GB', system: 'metric' })
    const said = renderToStaticMarkup(MovedPlan({ moved: read[0]!.moved, words, timeZone: 'UTC', change: 7 }))
    expect(said).toContain('And 892 steps more.')
    expect(said).toContain('888 more steps find no hours any more.')
    expect(said).toContain(', and 892 more.')
  })

  it.each([
    ['no list', '{"a":1}'],
    ['no JSON', '[{'],
    ['something else', '[null, 7, "x", [], {}]'],
    ['another cause', JSON.stringify([{ ...moveOf(1), by: 'the moon' }])],
    ['no number', JSON.stringify([{ ...moveOf(1), number: 'one' }])],
    ['no steps', JSON.stringify([{ ...moveOf(1), moved: { lost: [], gone: [] } }])],
  ])('is nothing where the browser keeps %s', (_, text) => {
    const shelf = shelfOf()
    shelf.texts.set(place, text)
    expect(readMoves(shelf, 'teal', 2)).toEqual([])
  })

  it('leaves out rows that cannot be said', () => {
    const shelf = shelfOf()
    const bad = [null, { step: 'a' }, { ...step(1), text: { code: 7, data: {} } }, { ...named('x') }]
    const odd = { ...step(2), text: { code: 'step.sand', data: { zone: 'Deck', inner: { a: 1 } } } }
    shelf.texts.set(
      place,
      JSON.stringify([{ ...moveOf(1), moved: { steps: [...bad, odd], lost: bad, gone: [], launch: 'x' } }]),
    )
    const [move] = readMoves(shelf, 'teal', 2)
    expect(move?.moved.steps).toEqual([{ ...step(2), text: { code: 'step.sand', data: { zone: 'Deck' } } }])
    expect(move?.moved.lost).toEqual([named('x')])
    expect(move?.moved).not.toHaveProperty('launch')
  })

  it('is not kept where the browser keeps nothing, and nothing breaks', () => {
    const full: MoveShelf = {
      getItem: () => {
        throw new DOMException('no', 'SecurityError')
      },
      setItem: () => {
        throw new DOMException('no room', 'QuotaExceededError')
      },
    }
    for (const shelf of [undefined, full]) {
      writeMoves(shelf, 'teal', [moveOf(1)])
      expect(readMoves(shelf, 'teal', 2)).toEqual([])
    }
  })
})
