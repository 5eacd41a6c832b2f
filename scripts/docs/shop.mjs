// A directory with the sample files, for commands that write, gone afterwards.

import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/**
 * @template T
 * @param {string} root
 * @param {(directory: string) => T} work
 * @returns {T}
 */
export function inShop(root, work) {
  const directory = mkdtempSync(join(tmpdir(), 'hardstand-docs-'))
  try {
    const samples = join(root, 'samples')
    if (existsSync(samples)) cpSync(samples, join(directory, 'samples'), { recursive: true })
    return work(directory)
  } finally {
    rmSync(directory, { recursive: true, force: true })
  }
}
