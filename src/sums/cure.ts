/** Cure: a sheet's time at a temperature between and beyond the rows it prints. */
import { type CureHours, type CureSense, type CureTable, hoursAt } from '#core/cure'
import type { Note } from '#core/note'
import { defineSum, type HowLine, how, result } from './sum.ts'
import { SumError } from './sum-error.ts'
import { readTimeTable } from './time-table.ts'

const practice = 'assumed'
const doubling = 'US government coating specification for pot life; help page of a chandler'

export const cure = defineSum({
  id: 'cure',
  doc: 'Time of a data sheet’s table at a temperature.',
  inputs: [
    {
      name: 'table',
      dimension: 'text',
      required: true,
      limits: {},
      doc: 'Rows of the sheet, temperature and time.',
      example: '5C:24h,15C:10h,25C:6h',
    },
    {
      name: 'at',
      dimension: 'temperature',
      required: true,
      limits: { atLeast: -40, atMost: 150 },
      doc: 'Temperature wanted.',
      example: '20 °C',
    },
    {
      name: 'sense',
      dimension: 'text',
      required: false,
      default: 'least',
      limits: {},
      doc: 'least for a wait that must have passed (recoat, sand, cure), most for a limit (pot life, last recoat).',
      example: 'least',
    },
  ],
  work: (given) => {
    const table = readTimeTable('table', given.text('table'))
    const airC = given.number('at')
    const sense = readSense(given.text('sense'))
    const found = hoursAt(table, airC, sense)
    return {
      results: [
        ...(found.stopped ? [] : [result('hours', found.hours, 'time')]),
        result('stopped', found.stopped, 'flag'),
        result('found', found.found, 'text'),
      ],
      how: [howFound(table, airC, found)],
      notes: foundNotes(table, sense, found),
      sources: ['linear in the logarithm of the time against temperature, in the sheet’s own table'],
    }
  },
})

function readSense(text: string): CureSense {
  const sense = text.trim().toLowerCase()
  if (sense === 'least' || sense === 'most') return sense
  throw new SumError(
    'sums.badSense',
    { field: 'sense', text },
    `sense: unknown, got "${text}", expected least or most`,
  )
}

function howFound(table: CureTable, airC: number, { hours, found, stopped }: CureHours): HowLine {
  const answer = stopped ? { airC } : { airC, hours }
  const over = table.find((point) => point.airC >= airC) ?? table.at(-1)
  const under = table.findLast((point) => point.airC <= airC) ?? table[0]
  const rows = {
    ...(under ? { lowC: under.airC, lowHours: under.hours } : {}),
    ...(over ? { highC: over.airC, highHours: over.hours } : {}),
  }
  return how(howCodes[found], { ...rows, ...answer })
}

const howCodes: Readonly<Record<CureHours['found'], string>> = {
  row: 'sums.cureRow',
  between: 'sums.cureBetween',
  above: 'sums.cureAbove',
  below: 'sums.cureBelow',
  'one-point': 'sums.cureOnePoint',
}

function foundNotes(table: CureTable, sense: CureSense, { found }: CureHours): Note[] {
  const lowC = table[0]?.airC ?? Number.NaN
  const highC = table.at(-1)?.airC ?? Number.NaN
  if (found === 'one-point')
    return [
      { code: 'sums.cureOneRow', severity: 'assumed', data: { rowC: lowC, factor: 2 }, source: doubling },
    ]
  if (found === 'below')
    return sense === 'least'
      ? [{ code: 'sums.cureStopped', severity: 'notice', data: { lowC }, source: practice }]
      : [{ code: 'sums.cureHeldBelow', severity: 'assumed', data: { lowC }, source: practice }]
  if (found === 'above')
    return sense === 'least'
      ? [{ code: 'sums.cureHeldAbove', severity: 'assumed', data: { highC }, source: practice }]
      : [{ code: 'sums.cureShortened', severity: 'assumed', data: { highC, factor: 2 }, source: practice }]
  return []
}
