// The table of what holds on what, row by row, against the rules that ship; typed here a second time.
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { judgeBond, type Material, readSelectors, type Where } from '#core/coating'
import { bondBook } from '#plan'

type Row = {
  readonly under: string
  readonly over: string
  readonly verdict: string
  readonly where?: Where
  readonly reason?: string
  /** Coarsest and finest paper that a source gives. */
  readonly grit?: readonly [string, string]
  readonly key?: string
  readonly waterWash?: boolean
  readonly dewax?: boolean
  readonly solvent?: string
  readonly tie?: string
  readonly clear?: string
  readonly only?: string
  readonly waitHours?: readonly [number, number]
  readonly disputed?: boolean
  /** Kinds of source that say so. */
  readonly class: readonly string[]
  readonly row: string
}

const table = JSON.parse(readFileSync(new URL('./compatibility.json', import.meta.url), 'utf8')) as {
  readonly source: string
  readonly rows: readonly Row[]
}

const book = bondBook(catalogue)

/** Words by which a class is known in the sources of the catalogue. */
const classes: Readonly<Record<string, RegExp>> = {
  'application guides': /application guides/,
  'data sheets': /data sheets/,
  chandlers: /chandlers/,
  'epoxy guides': /epoxy makers/,
  'gelcoat leaflet': /leaflet on gelcoat/,
  'refit logs': /refit logs/,
  'owners’ forums': /owners’ forums/,
  'surface preparation pages': /surface preparation/,
  'common practice': /^assumed/,
}

function materialOf(text: string): Material {
  const [coat = '', age = 'fresh', ...states] = text.split(', ')
  const [{ family, role = '' } = { family: '' }] = readSelectors(coat)
  return { family, role, age: age as Material['age'], states }
}

const bondOf = ({ under, over, where = 'above water' }: Row) =>
  judgeBond(book.rules, { under: materialOf(under), over: materialOf(over), where })

describe(table.source, () => {
  it.each(table.rows.map((row) => [`${row.row}: ${row.over} on ${row.under}`, row] as const))(
    '%s',
    (_, row) => {
      const bond = bondOf(row)
      const { preparation } = bond
      expect(bond.verdict).toBe(row.verdict)
      expect(bond.disputed).toBe(row.disputed ?? false)
      if (row.reason) expect(bond.says.map(({ reason }) => reason)).toContain(row.reason)
      if (row.grit) expect([preparation.grit?.coarsest.name, preparation.grit?.finest.name]).toEqual(row.grit)
      if (row.key) expect(preparation.key).toBe(row.key)
      if (row.waterWash) expect(preparation.waterWash).toBe(true)
      if (row.dewax) expect(preparation.dewax).toBe(true)
      if (row.solvent) expect(preparation.solvent).toBe(row.solvent)
      if (row.tie) expect(preparation.tie).toContainEqual(readSelectors(row.tie)[0])
      if (row.clear) expect(preparation.clear).toContain(row.clear)
      if (row.only) expect(preparation.only).toContain(row.only)
      if (row.waitHours) {
        expect(bond.wait?.hours).toBeGreaterThanOrEqual(row.waitHours[0])
        expect(bond.wait?.hours).toBeLessThanOrEqual(row.waitHours[1])
      }
    },
  )

  it('has every word of a rule from the class of source that says it', () => {
    const wrong = table.rows.flatMap((row) => {
      const sources = bondOf(row).says.flatMap(({ rule }) =>
        Object.values(catalogue.bonds[rule]?.sources ?? {}).map((origin) => origin?.source ?? ''),
      )
      return row.class
        .filter((name) => !sources.some((source) => classes[name]?.test(source)))
        .map((name) => `${row.row}: ${name} among ${sources.join(' / ')}`)
    })
    expect(wrong).toEqual([])
  })
})

const reference = new URL('../../../shared/references/trade.md', import.meta.url)

describe('the reference table', () => {
  it.skipIf(!existsSync(reference))('has no row that is not checked here', () => {
    const [, section = ''] = readFileSync(reference, 'utf8').split(/^## 2\. .*$/m)
    const rows = (section.split(/^---$/m)[0] ?? '')
      .split('\n')
      .filter((line) => line.startsWith('| ') && !line.startsWith('| Under'))
      .map((line) =>
        line
          .split('|')
          .slice(1, 3)
          .map((cell) => cell.trim())
          .join(' / '),
      )
    const checked = new Set(table.rows.map(({ row }) => row))
    expect(rows.length).toBeGreaterThan(15)
    expect(rows.filter((row) => !checked.has(row))).toEqual([])
  })
})

describe('the rules', () => {
  const coats = [
    'epoxy primer',
    'epoxy tie coat',
    'epoxy fairing',
    'epoxy laminating resin',
    'two-part polyurethane finish',
    'one-part finish',
    'one-part non-skid',
    'gelcoat finish',
    'acrylic non-skid',
    'polyester filler',
    'polyester laminating resin',
    'vinylester filler',
  ]
  const olds = [
    'gelcoat finish',
    'polyester laminating resin',
    'one-part finish',
    'two-part polyurethane finish',
    'epoxy primer',
    'acrylic non-skid',
    'lacquer finish',
    'antifouling finish',
  ]
  const pairs = [...olds.map((under) => `${under}, old`), ...coats.map((under) => `${under}, fresh`)].flatMap(
    (under) => coats.map((over) => ({ under, over })),
  )

  it('speak of every generic coat on everything that a boat has on it', () => {
    const untold = pairs.filter(
      ({ under, over }) =>
        judgeBond(book.rules, { under: materialOf(under), over: materialOf(over), where: 'above water' })
          .verdict === 'untold',
    )
    expect(untold).toEqual([])
  })

  it('contradict each other only where a dissent is written down', () => {
    const torn = pairs.filter(({ under, over }) => {
      const { says } = judgeBond(book.rules, {
        under: materialOf(under),
        over: materialOf(over),
        where: 'above water',
      })
      const bonds = says.filter(({ aspect, dissent }) => aspect === 'bond' && !dissent)
      return new Set(bonds.map(({ verdict }) => verdict)).size > 1
    })
    expect(torn).toEqual([])
  })
})
