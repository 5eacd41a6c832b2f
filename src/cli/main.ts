#!/usr/bin/env node
/** The command line: wires the commands, prints answers, and turns faults into sentences and exit codes. */
import { CommanderError, Command as Program } from 'commander'
import type { Command } from './command.ts'
import { buildup } from './commands/buildup.ts'
import { check } from './commands/check.ts'
import { doctor } from './commands/doctor.ts'
import { create } from './commands/new.ts'
import { papers } from './commands/papers.ts'
import { boat, days, hours, marks, money, pours, repairs, stores } from './commands/parts.ts'
import { planCommand } from './commands/plan.ts'
import { serve } from './commands/serve.ts'
import { sheets } from './commands/sheets.ts'
import { sumCommands } from './commands/sum.ts'
import { weather } from './commands/weather.ts'
import { CliFault } from './fault.ts'
import { appVersion } from './make-plan.ts'
import { plainWords } from './plain-words.ts'

const commands: readonly Command[] = [
  create,
  check,
  planCommand,
  boat,
  marks,
  repairs,
  buildup,
  sheets,
  hours,
  days,
  pours,
  stores,
  money,
  papers,
  weather,
  serve,
  doctor,
]

function program(): Program {
  const top = new Program('hardstand')
    .description(
      'Plans the refit of a glass-fibre boat: from the document of the job to days, stores, money and papers.',
    )
    .version(appVersion())
    .exitOverride()
    .configureHelp({ showGlobalOptions: false })
  for (const command of commands) add(top, command)
  const sum = top
    .command('sum')
    .description('one quick sum: dew, spread, wet, mix, catalyst, ply, bevel, vent, sun, cure')
  sum.exitOverride()
  for (const command of sumCommands) add(sum, command)
  return top
}

function add(parent: Program, command: Command): void {
  const made = parent.command(command.name).description(command.summary).exitOverride()
  if (command.argument) made.argument(command.argument.name, command.argument.doc)
  for (const flag of command.flags) made.option(flag.flags, flag.doc)
  made.option('--json', 'print one object, a number and its unit in each key')
  made.action(async (...given: readonly unknown[]) => {
    const argument = command.argument && typeof given[0] === 'string' ? given[0] : ''
    const flags = made.opts()
    const answer = await command.run({ argument, flags })
    const text = flags.json ? JSON.stringify(answer.json, null, 2) : answer.lines.join('\n')
    await write(`${text}\n`)
    const faults = answer.faults ?? []
    if (faults.length > 0) process.stderr.write(`${faults.join('\n')}\n`)
    if (answer.until) process.stderr.write(`${await answer.until()}\n`)
    process.exitCode = answer.exitCode ?? (faults.length > 0 ? 1 : 0)
  })
}

/** Waits until the text is out: an exit must not cut a long answer short in a pipe. */
const write = (text: string): Promise<void> =>
  new Promise((resolve) => {
    process.stdout.write(text, () => resolve())
  })

async function run(argv: readonly string[]): Promise<void> {
  try {
    await program().parseAsync([...argv])
  } catch (error) {
    process.exitCode = explain(error)
  }
}

/** 0 help and version, 1 bad input, 2 bad usage; a fault of the program itself says so and shows its trace. */
function explain(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
  if (error instanceof CliFault) {
    process.stderr.write(`${error.lines.join('\n')}\n`)
    return error.exitCode
  }
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error)
  process.stderr.write(`${plainWords.sentence('cli.ownFault')}\n${trace}\n`)
  return 1
}

// A reader that has seen enough, such as `head`, closes the pipe: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})

await run(process.argv)
