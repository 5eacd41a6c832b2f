import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readSheets } from './read-sheets.ts'
import { noSheets, type SheetFile, sheetsOnly } from './sheet-file.ts'
import { writeSheetsCsv, writeSheetsJson } from './write-sheets.ts'

const keys = {
  sheets: ['name', 'like', 'mix', 'volumeSolids', 'coverage', 'recoatLeast'],
  windows: ['sheet', 'at', 'from', 'until', 'sanded'],
  thinners: ['sheet', 'name', 'most'],
}
const bytes = (text: string) => new TextEncoder().encode(text)
const read = (text: string) => readSheets(bytes(text), keys)

const file: SheetFile = {
  sheets: {
    gloss: { name: 'Gloss, "pale" teal', mix: '2:1', recoatLeast: '10C: 18h, 20C: 10h' },
    primer: { name: '=HYPERLINK("x")', coverage: '100 ft²/qt' },
  },
  windows: { wet: { sheet: 'gloss', at: '23 °C', until: '4 h' } },
  thinners: { slow: { sheet: 'gloss', name: '-slow', most: '10 %' } },
}

describe('sheets as a file', () => {
  it('come back from JSON and from a table as they were', () => {
    expect(read(writeSheetsJson(file))).toEqual({ ok: true, file, problems: [] })
    expect(read(writeSheetsCsv(file, keys))).toEqual({ ok: true, file, problems: [] })
  })

  it('hold no cell that a spreadsheet takes for a formula', () => {
    const csv = writeSheetsCsv(file, keys)
    for (const line of csv.split('\r\n')) expect(line).not.toMatch(/(^|,)"?[=+@-]/)
  })

  it('come back whatever stands in their cells', () => {
    const text = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }).map((one) => one.trim())
    const cells = fc.record({ name: text, mix: text }).filter(({ name, mix }) => name !== '' && mix !== '')
    fc.assert(
      fc.property(fc.array(cells, { minLength: 1, maxLength: 6 }), (rows) => {
        const sheets = Object.fromEntries(rows.map((row, nr) => [`s${nr}`, row]))
        const made = { ...noSheets, sheets }
        const lines = (one: string) => one.replace(/\r\n?/g, '\n')
        const same = { ...made, sheets: JSON.parse(lines(JSON.stringify(sheets))) }
        const back = read(writeSheetsCsv(made, keys))
        // Line ends inside a cell are told as one kind.
        if (!JSON.stringify(sheets).includes('\\r')) expect(back).toMatchObject({ ok: true, file: same })
        else expect(back.ok).toBe(true)
      }),
    )
  })

  it('are taken out of a whole job document, and out of a table with names alone', () => {
    expect(
      read(JSON.stringify({ hardstand: '1', work: { ...file, zones: { a: { kind: 'hatch' } } } })),
    ).toMatchObject({
      ok: true,
      file,
    })
    expect(read('name,mix\nGloss,2:1\n')).toMatchObject({
      ok: true,
      file: { sheets: { 'row-2': { name: 'Gloss', mix: '2:1' } } },
    })
  })

  it('keep both of two rows with one id', () => {
    const found = read('id,name\na,One\na,Two\n')
    expect(found.ok && Object.keys(found.file.sheets)).toEqual(['a', 'a-2'])
  })

  it('of some products leave the others out, with their rows', () => {
    expect(sheetsOnly(file, ['primer'])).toEqual({ ...noSheets, sheets: { primer: file.sheets.primer } })
  })
})

describe('files that cannot be meant', () => {
  const codes = (text: string) => read(text).problems.map(({ code }) => code)

  it('are told by what is wrong', () => {
    expect(codes('')).toEqual(['intake.sheetsNone'])
    expect(codes('{')).toEqual(['intake.sheetsJson'])
    expect(codes('[1,2]')).toEqual(['intake.sheetsNone'])
    expect(codes('nothing,of,it\n1,2,3')).toContain('intake.sheetsHead')
    expect(codes('id,name\na,"broken')).toContain('intake.sheetsQuotes')
    expect(codes('\u0000\u0001\u0002')).toEqual(['intake.sheetsBinary'])
    expect(codes(`id,name\n${'a,b\n'.repeat(2200)}`)).toContain('intake.sheetsRows')
    expect(readSheets(new Uint8Array(2 ** 20 + 1).fill(97), keys).problems[0]?.code).toBe(
      'intake.sheetsTooLarge',
    )
  })

  it('keep what is known of the rest and name what is not', () => {
    const found = read('section,id,name,volumSolids,potholes\nsheets,a,One,50 %,3\nboats,b,Two,,\n')
    expect(found.ok).toBe(true)
    expect(found.problems.map(({ code, data }) => [code, data.like ?? data.found])).toEqual([
      ['intake.sheetsColumn', 'volumeSolids'],
      ['intake.sheetsColumn', ''],
      ['intake.sheetsSection', 'boats'],
    ])
  })

  it('reach no prototype', () => {
    const found = read('{"sheets":{"__proto__":{"name":"x"},"constructor":{"name":"y"}}}')
    expect(found.ok && Object.keys(found.file.sheets).sort()).toEqual(['__proto__', 'constructor'])
    expect(({} as Record<string, unknown>).name).toBeUndefined()
  })

  it('never throw', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 400 }), (garbage) => void readSheets(garbage, keys)))
    fc.assert(fc.property(fc.json(), (json) => void read(json)))
  })
})
