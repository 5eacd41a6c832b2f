import { expect, test } from 'vitest'
import { commandFaults } from './commands.mjs'
import { commandsOf } from './help.mjs'
import { readPage } from './markdown.mjs'

const HELP: Record<string, string> = {
  '--help': `Usage: hardstand [options] [command]

Plans the refit of a boat.

Options:
  -V, --version      output the version number
  -h, --help         display help for command

Commands:
  plan [options] <job>   the whole road, with a text that
                         wraps --nowhere to be seen
  sum                    one quick sum
  help [command]         display help for command
`,
  'plan --help': `Usage: hardstand plan [options] <job>

Arguments:
  job                the job document

Options:
  --weather <file>   hourly weather
  -o, --out <dir>    where papers go
  --json             print JSON
  -h, --help         display help for command
`,
  'sum --help': 'Usage: hardstand sum [options] [command]\n\nCommands:\n  dew [options]  dew point\n',
  'sum dew --help': `Usage: hardstand sum dew [options]

Options:
  --air <quantity>  air in the shade, for example "20
                    °C"
  --json            print JSON
`,
}

const commands = commandsOf((args) => ({ stdout: HELP[args.join(' ')] ?? '' }))

const DOCS = `# Commands
## Every command
\`--json\` prints JSON.
## hardstand plan JOB
\`--weather FILE\` and \`--out DIR\`.
## hardstand sum NAME
### hardstand sum dew
\`--air\` is the temperature.
`

const faultsOf = (text: string) => commandFaults({ page: readPage(text), commands })

test('commands and flags are read from what --help prints, those below others too', () => {
  expect(commands.map(({ path, flags }) => [path.join(' '), ...flags])).toEqual([
    [''],
    ['plan', '--weather', '--out', '--json'],
    ['sum'],
    ['sum dew', '--air', '--json'],
  ])
})

test('a flag comes with the example of its description, wrapped or not', () => {
  expect(commands.at(-1)?.samples).toEqual([['--air', '20 °C']])
})

test('docs that describe every command and flag pass', () => {
  expect(faultsOf(DOCS)).toEqual([])
})

test('a command without a heading is refused', () => {
  expect(faultsOf(DOCS.replace('### hardstand sum dew', ''))).toEqual([
    'docs/commands.md: "hardstand sum dew" has no heading',
  ])
})

test('a flag that its section does not name is refused, a longer flag does not stand for it', () => {
  expect(faultsOf(DOCS.replace('--out DIR', '--outer DIR'))).toEqual([
    'docs/commands.md:4: --out of "hardstand plan" is not described',
  ])
})

test('a shared flag must be described somewhere', () => {
  expect(faultsOf(DOCS.replace('--json', 'it'))).toHaveLength(2)
})

test('a heading for a command that the program lacks is refused', () => {
  expect(faultsOf(`${DOCS}## hardstand fly\n`)).toEqual([
    'docs/commands.md:9: the program has no command "hardstand fly"',
  ])
})

test('a program that lists no command is refused', () => {
  const none = commandsOf(() => ({ stdout: '' }))
  expect(commandFaults({ page: readPage(DOCS), commands: none })).toEqual([
    'hardstand --help lists no command',
  ])
})
