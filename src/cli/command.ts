/** What a command is: its words for the help, and a function from arguments to an answer. */
import type { ExitCode } from './fault.ts'

export type Flag = {
  /** As commander takes it: `--weather <file>`. */
  readonly flags: string
  readonly doc: string
}

export type Answer = {
  /** For people. */
  readonly lines: readonly string[]
  /** For programs: one object, a number and its unit in each key. */
  readonly json: unknown
  /** What is wrong with what was given, though there is an answer: goes to standard error. */
  readonly faults?: readonly string[]
  readonly exitCode?: ExitCode
  /** Goes on after the answer is printed, for a command that stays; gives the line it ends with. */
  readonly until?: () => Promise<string>
}

/** Values of flags by camel-case name, as commander gives them. */
export type Flags = Readonly<Record<string, string | boolean | undefined>>

export type Command = {
  readonly name: string
  readonly summary: string
  /** `<job>`, `<file>`, `[name]`; absent when there is none. */
  readonly argument?: { readonly name: string; readonly doc: string }
  readonly flags: readonly Flag[]
  readonly run: (input: { readonly argument: string; readonly flags: Flags }) => Promise<Answer>
}

/** The value of a flag that takes one. */
export const textFlag = (flags: Flags, name: string): string | undefined => {
  const value = flags[name]
  return typeof value === 'string' ? value : undefined
}
