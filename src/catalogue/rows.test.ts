import { describe, expect, it } from 'vitest'
import { type Fields, readCell, sheetFields } from '#job'
import { clockPoints, inSi } from '../../test/written-cell.ts'
import { catalogue } from './catalogue.ts'
import { catalogueFields } from './catalogue-fields.ts'
import { catalogueIds } from './catalogue-ids.ts'
import { mishapFields } from './mishap-fields.ts'
import { mishaps } from './mishaps.ts'
import { type Origin, type Row, rowWriter } from './row.ts'

type Any = Row<Fields>
type Written = { readonly id: string; readonly fields: Fields; readonly row: Any }

const table = (name: string, fields: Fields, rows: Readonly<Record<string, Any>>): readonly Written[] =>
  Object.entries(rows).map(([id, row]) => ({ id: `${name} ${id}`, fields, row }))

const rows: readonly Written[] = [
  ...table('sheet', sheetFields, catalogue.sheets),
  ...table('rate', catalogueFields.rates, catalogue.rates),
  ...table('abrasive', catalogueFields.abrasives, catalogue.abrasives),
  ...table('grit', catalogueFields.gritLadder, catalogue.gritLadder),
  ...table('consumable', catalogueFields.consumables, catalogue.consumables),
  ...table('finish', catalogueFields.finishStandards, catalogue.finishStandards),
  ...table('bond', catalogueFields.bonds, catalogue.bonds),
  ...table('order', catalogueFields.workOrder, catalogue.workOrder),
  ...table('practice', catalogueFields.coatPractice, catalogue.coatPractice),
  ...table('hiding', catalogueFields.hidings, catalogue.hidings),
  ...table('strip', catalogueFields.strips, catalogue.strips),
  ...table('old coating', catalogueFields.oldCoatings, catalogue.oldCoatings),
  ...table('mishap', mishapFields, mishaps),
  { id: 'limits', fields: catalogueFields.limits, row: catalogue.limits },
]

const cells = rows.flatMap(({ id, fields, row }) =>
  Object.entries(row.cells).map(([key, text]) => ({
    at: `${id}: ${key}`,
    field: fields[key],
    text: String(text),
    origin: row.sources[key],
  })),
)

const faultsOf = (fault: (cell: (typeof cells)[number]) => string | undefined): readonly string[] =>
  cells.flatMap((cell) => {
    const found = fault(cell)
    return found === undefined ? [] : [`${cell.at}: ${found}`]
  })

/** What the document reader finds wrong with a cell; the odd as well as the unreadable. */
function readingFault(field: Field | undefined, text: string): string | undefined {
  if (field === undefined) return 'no such field'
  const reading = readCell(field, text, { currency: undefined })
  return reading.ok ? reading.note?.code : reading.code
}

describe('every cell', () => {
  it('belongs to a field and reads as one', () => {
    expect(cells.length).toBeGreaterThan(500)
    expect(faultsOf(({ field, text }) => readingFault(field, text))).toEqual([])
  })

  it('says where it comes from, and is assumed exactly where nobody published it', () => {
    expect(
      faultsOf(({ origin }) => {
        if (origin === undefined || origin.source.trim() === '') return 'no origin'
        const guess = origin.source.startsWith('assumed')
        return guess === (origin.certainty === 'assumed')
          ? undefined
          : `${origin.certainty}, ${origin.source}`
      }),
    ).toEqual([])
  })

  it('lies within what was seen in its source', () => {
    const measured = cells.filter(({ origin }) => origin?.seen !== undefined)
    expect(measured.length).toBeGreaterThan(40)
    expect(
      faultsOf(({ field, text, origin }) => {
        if (origin?.seen === undefined || field === undefined) return undefined
        return insideSeen(field, text, origin.seen)
          ? undefined
          : `${text} outside ${origin.seen.join(' to ')}`
      }),
    ).toEqual([])
  })
})

type Field = Fields[string]

function insideSeen(field: Field, text: string, [low, high]: NonNullable<Origin['seen']>): boolean {
  const [least, value, most] = [low, text, high].map((each) => sizeOf(field, each))
  return least !== undefined && most !== undefined && value !== undefined && least <= value && value <= most
}

/** A number that grows with the figure: the hours of a clock at its first temperature, the catalyst of a ratio. */
function sizeOf(field: Field, text: string): number {
  if (field.kind === 'clockTable')
    return clockPoints(text).find(({ airC }) => airC === 20)?.hours ?? Number.NaN
  if (field.kind === 'ratio') return -inSi(text, 'ratio')
  // Written as ml/m², a coverage is read upside down.
  if (field.kind === 'quantity' && text.includes('/m²')) return 1 / inSi(text, field.dimension)
  return field.kind === 'quantity' ? inSi(text, field.dimension) : Number.NaN
}

describe('every row', () => {
  it('has the cells that its table cannot do without', () => {
    const missing = rows.flatMap(({ id, fields, row }) =>
      Object.entries(fields)
        .filter(([key, field]) => field.need === 'required' && row.cells[key] === undefined)
        .map(([key]) => `${id}: ${key}`),
    )
    expect(missing).toEqual([])
  })

  it('is as sure as its weakest cell', () => {
    for (const { id, row } of rows) {
      const assumed = Object.values(row.sources).some((origin) => origin?.certainty === 'assumed')
      expect(row.certainty, id).toBe(assumed ? 'assumed' : 'typical')
    }
  })

  it('refers only to rows that exist', () => {
    const known: Readonly<Record<string, readonly string[]>> = catalogueIds
    const dangling = cells.flatMap(({ at, field, text }) =>
      field?.kind === 'ref' && !known[field.to]?.includes(text) ? [`${at}: ${text}`] : [],
    )
    expect(dangling).toEqual([])
  })

  it('cannot be given a cell twice', () => {
    const { from, assumed, row } = rowWriter<typeof catalogueFields.rates>()
    expect(() => row(from('a log', { time: '1 h' }), assumed({ time: '2 h' }))).toThrow(
      'cell twice, got time',
    )
  })
})

describe('the catalogue', () => {
  it('cannot be changed, down to the last cell', () => {
    const open = (value: unknown): boolean =>
      typeof value === 'object' &&
      value !== null &&
      (!Object.isFrozen(value) || Object.values(value).some(open))
    expect(open(catalogue)).toBe(false)
  })

  it('is plain data: through JSON and back it is the same', () => {
    expect(JSON.parse(JSON.stringify(catalogue))).toEqual(catalogue)
  })

  it('lists its ids', () => {
    expect(catalogueIds.rates).toEqual(Object.keys(catalogue.rates))
    expect(catalogueIds.hazards.length).toBe(catalogue.hazards.length + catalogue.standingCautions.length)
    expect(catalogueIds.solvents).toContain('styrene')
  })
})

describe('a rule of bonding', () => {
  it('that refuses says what makes it right, unless it only speaks against the others', () => {
    const refusing: readonly Any[] = Object.values(catalogue.bonds).filter(
      (row: Any) => row.cells.verdict === 'no',
    )
    const decide = refusing.filter(({ cells }) => cells.dissent !== 'yes')
    expect(decide.length).toBeGreaterThan(10)
    expect(decide.filter(({ cells }) => cells.tie === undefined && cells.clear === undefined)).toEqual([])
  })
})
