/** Reads the rows about bonding, order, coats and colours into what the judge reckons with. */
import { type Catalogue, catalogueFields } from '#catalogue'
import {
  type Act,
  type BondBook,
  type BondRule,
  type CoatPractice,
  type Grit,
  type OrderRule,
  readSelectors,
  type Verdict,
} from '#core/coating'
import { type AnyRow, cell, figureIn } from './catalogue-cell.ts'

const HOURS_A_YEAR = 8766

/** The book of rules as the catalogue ships it. */
export function bondBook(catalogue: Catalogue): BondBook {
  const grits = gritsIn(catalogue)
  return {
    rules: rowsOf(catalogue.bonds, (id, row) => bondRule(id, row, grits)),
    order: rowsOf(catalogue.workOrder, orderRule),
    practice: rowsOf(catalogue.coatPractice, (id, row) => practiceOf(id, row, { catalogue, grits })),
    hiding: rowsOf(catalogue.hidings, (id, row) => {
      const { colours, over, shade } = row.cells
      return {
        id,
        colours: wordsOf(colours),
        over: wordsOf(over),
        ...(shade === undefined ? {} : { shade }),
        coats: countIn(catalogueFields.hidings, row, 'coats'),
        ...cited(row),
      }
    }),
    strips: rowsOf(catalogue.strips, (id, row) => {
      const { of, leaves } = row.cells
      const [left = { family: 'gelcoat' }] = readSelectors(leaves ?? '')
      return {
        id,
        of: readSelectors(of ?? ''),
        leaves: left,
        hoursPerM2: figureIn(catalogueFields.strips, row, 'rate') ?? 0,
        ...cited(row),
      }
    }),
    guesses: rowsOf(catalogue.oldCoatings, (id, row) => ({
      id,
      shows: row.cells.shows ?? '',
      maybe: readSelectors(row.cells.maybe ?? ''),
      ...cited(row),
    })),
  }
}

const rowsOf = <T>(
  table: Readonly<Record<string, AnyRow>>,
  read: (id: string, row: AnyRow) => T,
): readonly T[] => Object.entries(table).map(([id, row]) => read(id, row))

/** All sources of a row; the row is as sure as its weakest cell. */
function cited(row: AnyRow): { readonly source: string; readonly certainty: 'typical' | 'assumed' } {
  const origins = Object.values(row.sources)
  const named = [...new Set(origins.map((origin) => origin?.source ?? 'assumed'))]
  const guessed = origins.some((origin) => origin?.certainty === 'assumed')
  return { source: named[0] ?? 'assumed', certainty: guessed ? 'assumed' : 'typical' }
}

const wordsOf = (text = ''): readonly string[] => text.split(',').map((word) => word.trim().toLowerCase())
const isYes = (text: string | undefined): boolean => text === 'yes'

type Cells = (typeof catalogueFields)[keyof typeof catalogueFields]

const countIn = (fields: Cells, row: AnyRow, key: string): number => Number(cell(fields, row, key))

/** Every grade of paper with the size of its grains. */
export const gritsIn = (catalogue: Catalogue): readonly Grit[] =>
  Object.entries(catalogue.abrasives).flatMap(([name, row]) => {
    const sizeM = figureIn(catalogueFields.abrasives, row, 'size')
    return sizeM === undefined ? [] : [{ name, sizeM }]
  })

function bondRule(id: string, row: AnyRow, grits: readonly Grit[]): BondRule {
  const { cells } = row
  const gritOf = (wanted: string | undefined) => grits.find(({ name }) => name === wanted)
  const [coarsest, finest] = [gritOf(cells.gritCoarsest), gritOf(cells.gritFinest)]
  const hours = figureIn(catalogueFields.bonds, row, 'wait')
  return {
    id,
    aspect: cells.aspect ?? 'bond',
    under: readSelectors(cells.under ?? ''),
    over: readSelectors(cells.over ?? ''),
    ...only(cells, ['age', 'state', 'where', 'shade', 'solvent', 'key', 'clear', 'only']),
    verdict: (cells.verdict ?? 'no') as Verdict,
    dissent: isYes(cells.dissent),
    reason: cells.reason ?? '',
    waterWash: isYes(cells.waterWash),
    dewax: isYes(cells.dewax),
    ...(coarsest && finest ? { grit: { coarsest, finest } } : {}),
    tie: readSelectors(cells.tie ?? ''),
    ...(hours === undefined ? {} : { wait: { hours, until: cells.until ?? 'dry' } }),
    ...cited(row),
  }
}

/** Those of the cells that are there; choices, so their texts are the values. */
const only = (cells: AnyRow['cells'], keys: readonly string[]): Partial<BondRule> =>
  Object.fromEntries(keys.flatMap((key) => (cells[key] === undefined ? [] : [[key, cells[key]]])))

const orderRule = (id: string, row: AnyRow): OrderRule => ({
  id,
  act: row.cells.act as Act,
  ...(row.cells.needs === undefined ? {} : { needs: row.cells.needs as Act }),
  ...(row.cells.notAfter === undefined ? {} : { notAfter: row.cells.notAfter as Act }),
  on: readSelectors(row.cells.on ?? ''),
  ...(row.cells.age === undefined ? {} : { age: row.cells.age as 'old' | 'fresh' }),
  reason: row.cells.reason ?? '',
  ...cited(row),
})

function practiceOf(
  id: string,
  row: AnyRow,
  { catalogue, grits }: { readonly catalogue: Catalogue; readonly grits: readonly Grit[] },
): CoatPractice {
  const limitOf = (key: string | undefined): number | undefined =>
    key === undefined ? undefined : figureIn(catalogueFields.limits, catalogue.limits, key)
  const { of, life, filmMost, buildMost, between } = row.cells
  const paper = gritFor(between, catalogue, grits)
  const [film, build] = [limitOf(filmMost), limitOf(buildMost)]
  return {
    id,
    of: readSelectors(of ?? ''),
    coats: countIn(catalogueFields.coatPractice, row, 'coats'),
    ...(paper === undefined ? {} : { between: paper }),
    ...(life === undefined ? {} : { lifeHours: Number(life) * HOURS_A_YEAR }),
    ...(film === undefined ? {} : { filmMostM: film }),
    ...(build === undefined ? {} : { buildMostM: build }),
    ...cited(row),
  }
}

/** The grit of a purpose, where one is named. */
function gritFor(
  purpose: string | undefined,
  { gritLadder }: Catalogue,
  grits: readonly Grit[],
): Grit | undefined {
  const row = Object.entries(gritLadder).find(([id]) => id === purpose)?.[1]
  return row && grits.find(({ name }) => name === row.cells.grit)
}
