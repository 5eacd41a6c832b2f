// The built program as a server of its own process, on loopback, in a folder that is the test's.
import { type ChildProcess, spawn } from 'node:child_process'
import { createServer } from 'node:net'
import { fileURLToPath } from 'node:url'

const program = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url))

export type Served = {
  readonly child: ChildProcess
  /** Everything it has written so far. */
  readonly output: () => string
  readonly ended: Promise<number | null>
}

export type ServeOptions = {
  readonly port: number
  readonly folder: string
  readonly more?: readonly string[]
  readonly environment?: Readonly<Record<string, string>>
  /** What runs it, such as a tracer, with its arguments. */
  readonly under?: readonly string[]
}

export function serve({ port, folder, more = [], environment = {}, under = [] }: ServeOptions): Served {
  const args = [program, 'serve', '--port', String(port), '--data', folder, ...more]
  const [command = process.execPath, ...rest] = [...under, process.execPath]
  const child = spawn(command, [...rest, ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, ...environment },
  })
  const chunks: string[] = []
  child.stdout.on('data', (chunk) => chunks.push(String(chunk)))
  child.stderr.on('data', (chunk) => chunks.push(String(chunk)))
  const ended = new Promise<number | null>((resolve) => child.once('close', (code) => resolve(code)))
  return { child, output: () => chunks.join(''), ended }
}

/** A port that was free a moment ago. */
export async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  await new Promise((resolve) => server.close(resolve))
  return typeof address === 'object' && address ? address.port : 0
}
