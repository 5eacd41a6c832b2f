import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { expect, onTestFinished, test, vi } from 'vitest'
import { ROOT } from './main.mjs'

/** Stands for npm: writes down that it was called, empties node_modules as `npm ci` does, then does as it is told. */
const FAKE_NPM = `#!${process.execPath}
const fs = require('node:fs')
const calls = process.env.FAKE_CALLS
fs.appendFileSync(calls, process.argv.slice(2).join(' ') + '\\n')
fs.rmSync('node_modules', { recursive: true, force: true })
fs.mkdirSync('node_modules')
if (process.env.FAKE_NPM === 'offline') {
  console.error('npm error code ENOTFOUND')
  process.exit(1)
}
if (process.env.FAKE_NPM === 'broken') process.exit(1)
if (process.env.FAKE_NPM === 'slow') setTimeout(finish, 1500)
else finish()
function finish() {
  fs.writeFileSync('node_modules/lock.txt', fs.readFileSync('package-lock.json'))
}
`

function project() {
  const outer = mkdtempSync(join(tmpdir(), 'hardstand ready '))
  onTestFinished(() => rmSync(outer, { recursive: true, force: true, maxRetries: 5 }))
  const root = join(outer, 'a boat')
  const bin = join(outer, 'bin')
  mkdirSync(root)
  mkdirSync(bin)
  cpSync(join(ROOT, 'scripts'), join(root, 'scripts'), { recursive: true })
  writeFileSync(join(root, 'package.json'), '{ "name": "x", "version": "0.0.0", "type": "module" }')
  writeFileSync(join(root, 'package-lock.json'), 'first lock')
  writeFileSync(join(bin, 'npm'), FAKE_NPM)
  chmodSync(join(bin, 'npm'), 0o755)
  const calls = join(outer, 'calls')
  const { npm_execpath: _, ...env } = process.env
  return {
    root,
    calls: () => (existsSync(calls) ? readFileSync(calls, 'utf8').trim().split('\n') : []),
    installed: () => readFileSync(join(root, 'node_modules', 'lock.txt'), 'utf8'),
    lock: (text: string) => writeFileSync(join(root, 'package-lock.json'), text),
    args: [join(root, 'scripts', 'ready.mjs')],
    env: (npm: string) => ({
      ...env,
      PATH: `${bin}${delimiter}${env.PATH}`,
      FAKE_NPM: npm,
      FAKE_CALLS: calls,
    }),
  }
}

type Project = ReturnType<typeof project>

function ready(at: Project, { npm = 'good', build = false } = {}) {
  const args = build ? [...at.args, '--build'] : at.args
  return spawnSync(process.execPath, args, { env: at.env(npm), encoding: 'utf8' })
}

test('packages are installed after a clone, on a path with spaces', () => {
  const at = project()
  const run = ready(at)
  expect(run.stderr).toContain('Installing the packages')
  expect(run.status).toBe(0)
  expect(at.installed()).toBe('first lock')
  expect(at.calls()).toEqual(['ci --include=dev --no-audit --no-fund --prefer-offline'])
  expect(readdirSync(join(at.root, '.ready'))).toEqual([])
})

test('nothing is installed or said while the lock file and Node are the same', () => {
  const at = project()
  ready(at)
  const again = ready(at)
  expect([again.status, again.stdout, again.stderr]).toEqual([0, '', ''])
  expect(at.calls()).toHaveLength(1)
})

test('packages are installed again when the lock file differs', () => {
  const at = project()
  ready(at)
  at.lock('second lock')
  expect(ready(at).status).toBe(0)
  expect(at.installed()).toBe('second lock')
  expect(at.calls()).toHaveLength(2)
})

test('packages are installed again when they were installed for another Node', () => {
  const at = project()
  ready(at)
  const other =
    "Object.defineProperty(process, 'versions', { value: { ...process.versions, modules: '999' } })"
  const preload = `--import=data:text/javascript,${encodeURIComponent(other)}`
  const run = spawnSync(process.execPath, [preload, ...at.args], { env: at.env('good'), encoding: 'utf8' })
  expect(run.status).toBe(0)
  expect(at.calls()).toHaveLength(2)
})

test('the old packages stay when the registry is out of reach, and the next run tries again', () => {
  const at = project()
  ready(at)
  at.lock('second lock')
  const run = ready(at, { npm: 'offline' })
  expect(run.status).toBe(1)
  expect(run.stderr).toContain('the package registry was not reached. Connect, then run the command again.')
  expect(run.stderr).toContain('The packages installed before are untouched.')
  expect(run.stderr).not.toMatch(/^\s+at /m)
  expect(at.installed()).toBe('first lock')
  expect(ready(at).status).toBe(0)
  expect(at.installed()).toBe('second lock')
})

test('a failure that is not the network points to what npm said', () => {
  const at = project()
  const run = ready(at, { npm: 'broken' })
  expect(run.status).toBe(1)
  expect(run.stderr).toContain('The packages could not be installed; npm says why above.')
  expect(existsSync(join(at.root, 'node_modules'))).toBe(false)
})

test('a missing npm is named', () => {
  const at = project()
  const run = spawnSync(process.execPath, at.args, { env: { ...at.env('good'), PATH: '' }, encoding: 'utf8' })
  expect(run.stderr).toContain('npm was not found')
  expect(run.status).toBe(1)
})

test('a run killed while npm works leaves the old packages, and the next run installs', async () => {
  const at = project()
  ready(at)
  at.lock('second lock')
  const killed = spawn(process.execPath, at.args, { env: at.env('slow'), stdio: 'ignore' })
  await vi.waitFor(() => expect(at.calls()).toHaveLength(2), { timeout: 10_000 })
  killed.kill('SIGKILL')
  await once(killed, 'exit')
  expect(at.installed()).toBe('first lock')
  expect(ready(at).status).toBe(0)
  expect(at.installed()).toBe('second lock')
})

test('a run killed between the two moves of a swap is mended from what it moved aside', () => {
  const at = project()
  ready(at)
  mkdirSync(join(at.root, '.ready'), { recursive: true })
  renameSync(join(at.root, 'node_modules'), join(at.root, '.ready', 'old-node_modules'))
  expect(ready(at, { npm: 'offline' }).status).toBe(0)
  expect(at.installed()).toBe('first lock')
  expect(at.calls()).toHaveLength(1)
})

test('two runs at once install once', async () => {
  const at = project()
  const runs = [1, 2].map(() => spawn(process.execPath, at.args, { env: at.env('slow'), stdio: 'ignore' }))
  const codes = await Promise.all(runs.map(async (run) => (await once(run, 'exit'))[0]))
  expect(codes).toEqual([0, 0])
  expect(at.calls()).toHaveLength(1)
})

function projectWithSources() {
  const at = project()
  ready(at)
  for (const name of ['tsconfig.base.json', 'tsconfig.build.json'])
    cpSync(join(ROOT, name), join(at.root, name))
  for (const name of ['typescript', '@typescript', '@types', 'undici-types']) {
    symlinkSync(join(ROOT, 'node_modules', name), join(at.root, 'node_modules', name))
  }
  mkdirSync(join(at.root, 'src', 'cli'), { recursive: true })
  const source = (name: string, text: string) => writeFileSync(join(at.root, 'src', 'cli', name), text)
  source('main.ts', "import { a } from './a.ts'\nconsole.log(a)\n")
  source('a.ts', "export const a: string = 'first'\n")
  source('main.test.ts', 'this is no program')
  source('table.txt', 'rows')
  const says = () =>
    spawnSync(process.execPath, [join(at.root, 'dist', 'cli', 'main.js')], { encoding: 'utf8' }).stdout
  return { at, source, says, built: () => readdirSync(join(at.root, 'dist', 'cli')).sort() }
}

test('the program is built with what it reads beside it, without its tests', () => {
  const { at, says, built } = projectWithSources()
  const run = ready(at, { build: true })
  expect([run.status, run.stderr]).toEqual([0, ''])
  expect(says()).toBe('first\n')
  expect(built()).toEqual(['a.js', 'main.js', 'table.txt'])
})

test('the program is built again only when a source differs, whatever its date', () => {
  const { at, source, says } = projectWithSources()
  ready(at, { build: true })
  const program = join(at.root, 'dist', 'cli', 'main.js')
  writeFileSync(program, "console.log('kept')")
  utimesSync(join(at.root, 'src', 'cli', 'a.ts'), new Date(), new Date())
  ready(at, { build: true })
  expect(says()).toBe('kept\n')
  source('a.ts', "export const a: string = 'second'\n")
  ready(at, { build: true })
  expect(says()).toBe('second\n')
})

test('a file whose source is gone does not stay in the built program', () => {
  const { at, source, built } = projectWithSources()
  source('b.ts', 'export const b = 1\n')
  ready(at, { build: true })
  expect(built()).toContain('b.js')
  rmSync(join(at.root, 'src', 'cli', 'b.ts'))
  ready(at, { build: true })
  expect(built()).toEqual(['a.js', 'main.js', 'table.txt'])
})

test('a source that does not compile is named and the program built before stays', () => {
  const { at, source, says } = projectWithSources()
  ready(at, { build: true })
  source('a.ts', 'export const a: string = 1\n')
  const run = ready(at, { build: true })
  expect(run.status).toBe(1)
  expect(run.stderr).toContain('src/cli/a.ts(1,14)')
  expect(run.stderr).toContain('The program does not compile; the lines above say where.')
  expect(says()).toBe('first\n')
})

test('an old Node is told so in words, by a file that it can read', () => {
  const text = readFileSync(join(ROOT, 'scripts', 'ready.mjs'), 'utf8')
  const old = `Object.defineProperty(process.versions, 'node', { value: '12.22.0' })\n${text}`
  const run = spawnSync(process.execPath, ['--input-type=module', '-e', old], { encoding: 'utf8' })
  expect(run.status).toBe(1)
  expect(run.stderr).toContain('Hardstand needs Node 20 or newer; this is Node 12.22.0.')
  expect(text).not.toMatch(/\?\.|\?\?|^import |\bawait\b|`/m)
})
