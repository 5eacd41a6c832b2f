// The checks of the docs, each a name and a function that says what is wrong and what could not be looked at yet.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readTree } from '../layers/read-tree.mjs'
import { codeFaults } from './codes.mjs'
import { commandFaults } from './commands.mjs'
import { DEPENDENCIES_PAGE, dependencyFaults } from './dependencies.mjs'
import { docCommentFaults } from './doc-comments.mjs'
import { exampleProblem, examplesOf } from './examples.mjs'
import { commandsOf } from './help.mjs'
import { existsUnder, linkFaults } from './links.mjs'
import { nomenclatureFaults } from './nomenclature.mjs'
import { readPages } from './pages.mjs'
import { printedKeys } from './printed-keys.mjs'
import { programOf } from './program.mjs'
import { inShop } from './shop.mjs'

/**
 * @typedef {object} Findings
 * @property {string[]} faults
 * @property {string[]} remarks what was looked at only in part
 * @property {string} [skipped] why nothing could be looked at yet
 *
 * @typedef {{ name: string, run: (root: string) => Findings }} DocsCheck
 */

/** @type {readonly DocsCheck[]} */
export const docsChecks = [
  { name: 'links and anchors lead somewhere', run: links },
  { name: 'every command and flag is described', run: commands },
  { name: 'every dependency is explained', run: dependencies },
  { name: 'every code has a sentence', run: codes },
  { name: 'every function of a door has a doc comment', run: docComments },
  { name: 'every printed quantity is in the nomenclature', run: nomenclature },
  { name: 'the examples print what they show', run: examples },
]

/** @param {string} reason */
const skip = (reason) => ({ faults: [], remarks: [], skipped: reason })

/** @param {string[]} faults */
const found = (faults) => ({ faults, remarks: [] })

/**
 * Two checks ask; each command is a start of the program.
 *
 * @type {Map<string, import('./help.mjs').Command[]>}
 */
const commandsByRoot = new Map()

/**
 * @param {string} root
 * @param {import('./program.mjs').Program} program
 */
function commandsIn(root, program) {
  const commands = commandsByRoot.get(root) ?? commandsOf(program)
  commandsByRoot.set(root, commands)
  return commands
}

/** @param {string} root */
function links(root) {
  return found(linkFaults({ pages: readPages(root), exists: existsUnder(root) }))
}

/** @param {string} root */
function commands(root) {
  const program = programOf(root)
  if (typeof program === 'string') return skip(program)
  const page = readPages(root).get('docs/commands.md')
  if (page === undefined) return skip('there is no docs/commands.md yet')
  return found(commandFaults({ page, commands: commandsIn(root, program) }))
}

/** @param {string} root */
function dependencies(root) {
  const page = readPages(root).get(DEPENDENCIES_PAGE)
  if (page === undefined) return found([`there is no ${DEPENDENCIES_PAGE}`])
  const project = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  return found(
    dependencyFaults({
      page,
      packages: Object.keys({ ...project.dependencies, ...project.devDependencies }),
    }),
  )
}

/** @param {string} root */
function codes(root) {
  const { files } = readTree(root)
  if (!files.has('src/words/index.ts')) return skip('there is no src/words/index.ts yet')
  return found(codeFaults(files))
}

/** @param {string} root */
function docComments(root) {
  return found(docCommentFaults(readTree(root).files))
}

/** @param {string} root */
function nomenclature(root) {
  const program = programOf(root)
  if (typeof program === 'string') return skip(program)
  const pages = readPages(root)
  const page = pages.get('docs/nomenclature.md')
  if (page === undefined) return skip('there is no docs/nomenclature.md yet')
  const { keys, faults, remarks } = printedKeys({
    root,
    program,
    commands: commandsIn(root, program),
    examples: [...pages.values()].flatMap(examplesOf),
  })
  return { faults: [...faults, ...nomenclatureFaults({ page, keys })], remarks }
}

/** @param {string} root */
function examples(root) {
  const program = programOf(root)
  if (typeof program === 'string') return skip(program)
  const faults = [...readPages(root)].flatMap(([path, page]) =>
    inShop(root, (cwd) => examplesOf(page).flatMap((example) => runExample({ path, example, program, cwd }))),
  )
  return found(faults)
}

/**
 * @param {object} one
 * @param {string} one.path
 * @param {import('./examples.mjs').Example} one.example
 * @param {import('./program.mjs').Program} one.program
 * @param {string} one.cwd
 * @returns {string[]}
 */
function runExample({ path, example, program, cwd }) {
  const input = example.stdin === undefined ? '' : readFileSync(join(cwd, example.stdin), 'utf8')
  const problem = exampleProblem(example, program(example.args, { cwd, input }))
  return problem === undefined ? [] : [`${path}:${example.line}: $ ${example.command}\n${problem}`]
}
