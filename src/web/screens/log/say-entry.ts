/** An entry of the log in words: its kind, what it is about, and everything it holds. */
import { mishaps } from '#catalogue'
import type { RawCells } from '#job'
import { describeStep } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { sayReading } from '../../job/say-reading.ts'

type Saying = Pick<JobView, 'plan' | 'words' | 'system' | 'timeZone'>

const text = (cell: unknown): string => (typeof cell === 'string' ? cell.trim() : '')

/** `Runs: Primer on Foredeck, coat 1 of 2. It stands.` */
export function sayEntry(view: Saying, cells: RawCells): string {
  const about = [...whatOf(view, cells), ...heldOf(view, cells)].filter((part) => part !== '')
  const kind = kindOf(cells)
  return about.length === 0 ? kind : `${kind}: ${about.join('. ')}`
}

/** A mishap is called by what went wrong. */
function kindOf({ kind, mishap }: RawCells): string {
  const known = kind === 'mishap' && Object.hasOwn(mishaps, text(mishap))
  return labelOf(known ? `mishapName.${text(mishap)}` : `logKind.${text(kind)}`)
}

function whatOf({ plan, words }: Saying, { kind, step, film }: RawCells): readonly string[] {
  const described = text(step) !== '' && plan ? describeStep(plan, text(step)) : undefined
  const named = described ? words.sentence(described.code, described.data) : text(step)
  const became = kind === 'mishap' ? films[text(film)] : undefined
  return [named, became === undefined ? '' : labelOf(became)]
}

const films: Readonly<Record<string, string>> = {
  stands: 'whatNow.stands',
  'wiped off': 'whatNow.wiped',
  'sanded off': 'whatNow.sanded',
}

const held = {
  batch: 'log.heldBatch',
  used: 'log.heldUsed',
  wetFilm: 'log.heldWetFilm',
  rain: 'log.heldRain',
} as const

function heldOf(view: Saying, cells: RawCells): readonly string[] {
  const { words } = view
  const own = Object.entries(held).flatMap(([key, code]) => {
    const typed = text(cells[key])
    return typed === '' ? [] : [words.sentence(code, { text: typed })]
  })
  return [sayReading(view, cells), own.join(', '), text(cells.text)].map(capital)
}

const capital = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1)

/** What is said beside an entry of how it came to be there: told later, or no longer what counts. */
export function saySetting(
  { words, timeZone }: Saying,
  { written }: RawCells,
  corrected: boolean,
): readonly string[] {
  const writtenAtMs = Date.parse(text(written))
  return [
    ...(Number.isNaN(writtenAtMs) ? [] : [words.sentence('log.written', { writtenAtMs, timeZone })]),
    ...(corrected ? [labelOf('log.corrected')] : []),
  ]
}
