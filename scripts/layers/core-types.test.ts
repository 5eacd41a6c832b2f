import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { ROOT } from '../ready/main.mjs'

/** Errors of one more file compiled together with core, under core's own settings. */
function errorsOf(text: string): string[] {
  const directory = mkdtempSync(join(tmpdir(), 'hardstand core '))
  onTestFinished(() => rmSync(directory, { recursive: true }))
  const config = {
    extends: join(ROOT, 'tsconfig.core.json'),
    compilerOptions: { typeRoots: [join(ROOT, 'node_modules', '@types')] },
    include: [join(ROOT, 'src', 'core', '**', '*.ts'), 'probe.mts'],
    exclude: [join(ROOT, 'src', '**', '*.test.ts')],
  }
  writeFileSync(join(directory, 'tsconfig.json'), JSON.stringify(config))
  writeFileSync(join(directory, 'probe.mts'), text)
  const tsc = join(ROOT, 'node_modules', 'typescript', 'bin', 'tsc')
  const { stdout } = spawnSync(process.execPath, [tsc, '-p', directory, '--pretty', 'false'], {
    encoding: 'utf8',
  })
  return stdout.split('\n').filter((line) => line.includes('probe.mts'))
}

test('core sees no type of Node or of a browser', () => {
  const names = ['process', 'Buffer', 'document', 'window', 'fetch', 'setTimeout', 'console', 'require']
  const errors = errorsOf(names.map((name, i) => `export const a${i} = ${name}`).join('\n'))
  for (const [i, name] of names.entries()) {
    expect(errors.find((line) => line.includes(`(${i + 1},`))).toContain(`Cannot find name '${name}'`)
  }
})

test('core sees the language itself', () => {
  expect(errorsOf('export const a: number = [3, 1].toSorted()[0] ?? Math.hypot(3, 4)')).toEqual([])
})
