// Starts test/support/store-process.mjs with the compiled program and waits for what it says.
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'

const script = fileURLToPath(new URL('store-process.mjs', import.meta.url))

export type Child = {
  readonly process: ChildProcess
  /** Every line so far. */
  readonly lines: () => readonly string[]
  /** The first line; fails with what the process said wrong when it ends before. */
  readonly said: Promise<string>
  /** Kills it if need be, and waits until it is gone and all it wrote is read. */
  readonly end: () => Promise<void>
  readonly gone: Promise<unknown>
}

export type Start = {
  readonly mode: 'hold' | 'reopen' | 'twice' | 'few' | 'many'
  readonly path: string
  readonly start?: number
  /** The moment on the clock at which it begins. */
  readonly atMs?: number
  /** What runs it, such as a tracer, with its arguments. */
  readonly under?: readonly string[]
  readonly uid?: number
}

export function startStore({ mode, path, start, atMs, under = [], uid }: Start): Child {
  const [command = process.execPath, ...rest] = [...under, process.execPath]
  const given = ['--expose-gc', script, mode, path, String(start ?? 0), String(atMs ?? 0)]
  const child = spawn(command, [...rest, ...given], {
    stdio: ['ignore', 'pipe', 'pipe'],
    ...(uid === undefined ? {} : { uid }),
  })
  const read = { out: '', err: '' }
  child.stderr?.on('data', (text) => {
    read.err += text
  })
  const gone = once(child, 'close')
  const lines = () => read.out.split('\n').slice(0, -1)
  const said = new Promise<string>((resolve, reject) => {
    child.stdout?.on('data', (text) => {
      read.out += text
      const [first] = lines()
      if (first !== undefined) resolve(first)
    })
    gone.then(() => reject(new Error(`store process: ended without a word, ${read.err}`)), reject)
  })
  said.catch(() => undefined)
  const end = async (): Promise<void> => {
    child.kill('SIGKILL')
    await gone
  }
  return { process: child, lines, said, end, gone }
}
