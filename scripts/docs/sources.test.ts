import { expect, test } from 'vitest'
import { codeFaults, codesUsed } from './codes.mjs'
import { docCommentFaults } from './doc-comments.mjs'

const tree = (files: Record<string, string>) => new Map(Object.entries(files))

test('codes are found as `code:`, as the argument of an error and by the name of the room', () => {
  const files = tree({
    'src/core/boat/a.ts': `
      type BoatFault = 'boat.noBeam' | 'boat.noLength'
      const a = { code: wet ? 'hull.wet' : 'hull.dry', path: 'x.y' }
      throw new BoatError('beam.missing', { at: 'a.b' })
      // code: 'boat.comment'
      const place = 'work.boat'`,
    'src/core/boat/a.test.ts': "const a = { code: 'boat.tested' }",
  })
  expect([...codesUsed(files).keys()]).toEqual([
    'boat.noBeam',
    'boat.noLength',
    'hull.wet',
    'hull.dry',
    'beam.missing',
  ])
})

test('a code with a sentence passes and one without is named with its place', () => {
  const files = tree({
    'src/core/boat/a.ts': "note({ code: 'boat.draftAssumed' })\nnote({ code: 'boat.keelAssumed' })",
    'src/words/en/boat.ts': "export const boat = { 'boat.draftAssumed': 'The draft is assumed.' }",
    'src/words/boat.test.ts': "const a = 'boat.keelAssumed'",
  })
  expect(codeFaults(files)).toEqual([
    'src/core/boat/a.ts:2: the code boat.keelAssumed has no sentence in src/words/',
  ])
})

test('a function given out by a door needs a doc comment, however it is passed on', () => {
  const faults = docCommentFaults(
    tree({
      'src/units/index.ts': `
        export { told, bare, type Kind } from './a.ts'
        export { LIMIT, arrow, typed } from './b.ts'
        export * from './c.ts'
        export type { Other } from './c.ts'
        export { passed } from './d.ts'`,
      'src/units/a.ts':
        '/** Says. */\nexport function told() {}\nexport function bare() {}\nexport type Kind = 1',
      'src/units/b.ts': [
        'export const LIMIT = (1 + 2) * 3',
        '/** Says. */\nexport const told = () => 1',
        'export const arrow = (a: number): number => a',
        'export const typed: (a: number) => number = (a) => a',
      ].join('\n'),
      'src/units/c.ts': '/* no doc comment */\nexport async function starred() {}',
      'src/units/d.ts': "export { passed } from './e.ts'",
      'src/units/e.ts': 'const inner = 1\nexport function* passed() {}',
    }),
  )
  const names = ['a.ts:3: bare', 'b.ts:4: arrow', 'b.ts:5: typed', 'c.ts:2: starred', 'e.ts:2: passed']
  expect(faults).toEqual(
    names.map((name) => `src/units/${name} is given out by its room and has no doc comment`),
  )
})
