import { expect, test } from 'vitest'
import { runChecks } from './run-checks.mjs'

test('every check runs and has its line, whatever fails before it', async () => {
  const said: string[] = []
  const tally = await runChecks(
    [
      { name: 'types', run: () => ({ ok: false, output: 'a.ts: wrong\nb.ts: wrong' }) },
      {
        name: 'layers',
        run: () => {
          throw new Error('broken')
        },
      },
      { name: 'format', run: () => ({ ok: true, output: 'not shown' }) },
      { name: 'docs', run: () => ({ ok: true, output: '', skipped: 'no docs yet' }) },
    ],
    (line) => said.push(line),
  )
  expect(tally).toEqual({ passed: 1, failed: 2, skipped: ['docs'] })
  const lines = said
    .join('\n')
    .replace(/\d+\.\d s/g, '0.0 s')
    .split('\n')
  expect(lines.slice(0, 4)).toEqual([
    'FAIL    0.0 s  types',
    '     a.ts: wrong',
    '     b.ts: wrong',
    'FAIL    0.0 s  layers',
  ])
  expect(lines[4]).toBe('     Error: broken')
  expect(lines.slice(-2)).toEqual(['ok      0.0 s  format', 'skip    0.0 s  docs: no docs yet'])
})
