/**
 * The jobs the oracles look at: each sample as it stands, and once with a few cells set otherwise, so that shifts end
 * inside other shifts, coats take several pours and nothing is sanded where the sample sands.
 */
import type { RawDocument } from '#job'
import { type SampleName, sampleRaw, withCell } from '../support/samples.ts'

type CellSet = readonly [path: readonly string[], text: string]

export type OracleJob = {
  readonly sample: SampleName
  /** Cells of the work document. */
  readonly cells: readonly CellSet[]
}

const all = {
  'open-powerboat': { sample: 'open-powerboat', cells: [] },
  'deck-only': { sample: 'deck-only', cells: [] },
  'cruiser-topsides': { sample: 'cruiser-topsides', cells: [] },
  'open-powerboat in a shed, the lead for half days': {
    sample: 'open-powerboat',
    cells: [
      [['job', 'start'], '2027-04-20'],
      [['place', 'shelter'], 'shed'],
      [['shifts', 'ada-week', 'until'], '12:30'],
    ],
  },
  'deck-only with a wide sole, every evening': {
    sample: 'deck-only',
    cells: [
      [['job', 'start'], '2027-06-10'],
      [['shifts', 'dale-evenings', 'days'], 'Mon-Fri'],
      [['layers', 'prime', 'coats'], '4'],
      [['layers', 'gloss', 'sandBetween'], 'none'],
      [['zones', 'sole', 'width'], '15 ft'],
    ],
  },
  'cruiser-topsides with thick gloss, a helper at weekends': {
    sample: 'cruiser-topsides',
    cells: [
      [['job', 'start'], '2027-09-20'],
      [['shifts', 'finn-week', 'from'], '06:15'],
      [['shifts', 'gwen-week', 'days'], 'Sat, Sun'],
      [['layers', 'primer', 'sandBetween'], 'none'],
      [['sheets', 'gloss', 'dryFilm'], '200 µm'],
    ],
  },
  'cruiser-topsides late in the year, gloss on gloss': {
    sample: 'cruiser-topsides',
    cells: [
      [['job', 'start'], '2027-10-11'],
      [['layers', 'gloss', 'sandBetween'], 'none'],
      [['layers', 'primer', 'sandBetween'], 'none'],
      [['layers', 'primer', 'sandBefore'], 'none'],
      [['shifts', 'gwen-week', 'from'], '10:20'],
    ],
  },
} as const satisfies Readonly<Record<string, OracleJob>>

export type JobName = keyof typeof all

export const jobs: Readonly<Record<JobName, OracleJob>> = all
export const jobNames = Object.keys(all) as readonly JobName[]
/** The samples as they stand. */
export const sampleJobs = ['open-powerboat', 'deck-only', 'cruiser-topsides'] as const

/** As the program reads it. */
export const programDocument = ({ sample, cells }: OracleJob): RawDocument =>
  cells.reduce((raw, [path, text]) => withCell(raw, 'work', path, text), sampleRaw(sample))
