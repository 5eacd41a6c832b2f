// The built program with its sample jobs, on a free port of loopback, until it is stopped.

import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { createInterface } from 'node:readline'

/** @typedef {{ origin: string, stop: () => Promise<void> }} Program */

/**
 * @param {{ root: string, folder: string }} places
 * @returns {Promise<Program>} rejects when it ends before it serves
 */
export function startProgram({ root, folder }) {
  const args = [join(root, 'dist/cli/main.js'), 'serve', '--samples', '--port', '0', '--data', folder]
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] })
  const ended = new Promise((resolve) => child.once('close', resolve))
  const stop = async () => {
    child.kill('SIGTERM')
    await ended
  }
  return new Promise((resolve, reject) => {
    child.once('close', () => reject(new Error('program: ended, got no address, expected one')))
    createInterface({ input: child.stdout }).on('line', (line) => {
      const origin = /http:\/\/[^\s/]+/.exec(line)?.[0]
      if (origin !== undefined) resolve({ origin, stop })
    })
  })
}
