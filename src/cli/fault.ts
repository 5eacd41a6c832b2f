/** What went wrong for the person at the keyboard: sentences and the exit code, never a stack trace. */

/** 1: what was given is bad. 2: the command was used wrongly. */
export type ExitCode = 0 | 1 | 2

export class CliFault extends Error {
  readonly lines: readonly string[]
  readonly exitCode: ExitCode

  constructor(lines: readonly string[], exitCode: ExitCode = 1) {
    super(lines.join('\n'))
    this.lines = lines
    this.exitCode = exitCode
  }
}
