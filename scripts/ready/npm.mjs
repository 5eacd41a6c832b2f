// Runs npm: the one that started us when there is one, otherwise the one on the path.

import { spawnSync } from 'node:child_process'
import { basename } from 'node:path'
import { ended } from '../spawned.mjs'
import { errorCode } from './not-ready.mjs'

const ARGUMENTS = ['ci', '--include=dev', '--no-audit', '--no-fund', '--prefer-offline']

/**
 * `npm ci` in a directory.
 *
 * @param {string} directory
 * @param {NodeJS.ProcessEnv} env
 * @returns {{ ok: boolean, missing: boolean, output: string }}
 */
export function npmCi(directory, env) {
  const { command, args, shell } = npmCommand(env)
  const done = spawnSync(command, [...args, ...ARGUMENTS], {
    cwd: directory,
    env: withoutOuterProject(env),
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    shell,
  })
  return { ...ended(done), missing: errorCode(done.error) === 'ENOENT' }
}

/** @param {NodeJS.ProcessEnv} env */
function npmCommand(env) {
  const starter = env.npm_execpath
  if (starter !== undefined && /^npm(-cli)?\.c?js$/.test(basename(starter))) {
    return { command: process.execPath, args: [starter], shell: false }
  }
  // On Windows npm is a .cmd file, which only a shell starts; every argument is fixed and has no space.
  const windows = process.platform === 'win32'
  return { command: windows ? 'npm.cmd' : 'npm', args: [], shell: windows }
}

/**
 * The environment of a script names the project that npm runs it for; the inner npm must not take that one for its own.
 *
 * @param {NodeJS.ProcessEnv} env
 */
function withoutOuterProject(env) {
  return Object.fromEntries(
    Object.entries(env).filter(
      ([name]) => !/^(npm_config_(local_)?prefix|init_cwd|npm_package_.*)$/i.test(name),
    ),
  )
}
