import { describe, expect, it } from 'vitest'
import { logFields, moneyFields, project, type Sections, workFields } from '#job'
import { createWords, labelOf, problemText } from '#words'
import { fieldLabels } from '../src/words/field-labels.ts'
import { sampleRaw } from './support/samples.ts'

const sections: Sections = { ...workFields, ...moneyFields, ...logFields }
const cells = Object.entries(sections).flatMap(([section, { fields }]) =>
  Object.keys(fields).map((key) => `${section}.${key}`),
)
const words = createWords({ locale: 'en-GB', system: 'metric' })
/** A kilowatt is no key. */
const rawKey = /\b(?!kW\b)[a-z]+[A-Z][A-Za-z]*\b/

describe('every cell of the document', () => {
  it('has a label and a sentence of help, and no other cell has', () => {
    const wanted = cells.flatMap((cell) => [`cell.${cell}`, `cellHelp.${cell}`])
    expect(Object.keys(fieldLabels).sort()).toEqual([...wanted].sort())
  })

  it('is called by words of the trade, and helped with by a whole sentence', () => {
    for (const cell of cells) {
      const [label, help] = [labelOf(`cell.${cell}`), labelOf(`cellHelp.${cell}`)]
      expect(label, cell).toMatch(/^[A-Z][^.]{1,40}$/)
      expect(help, cell).toMatch(/^[A-Z].{10,}\.$/)
      expect(help, cell).not.toBe(`${label}.`)
      expect(`${label} ${help.replaceAll(/“[^”]*”|Europe\/Paris|en-GB/g, '')}`, cell).not.toMatch(rawKey)
    }
  })

  it('stands in a section that has a name', () => {
    for (const section of Object.keys(sections)) {
      expect(labelOf(`section.${section}`), section).toMatch(/^the /)
    }
  })
})

describe('a problem as people see it', () => {
  it('names no cell or section by its key, whatever is wrong', () => {
    const { problems } = project(spoilt(), { strict: false, catalogueIds: [], consumableIds: [] })
    const codes = new Set(problems.map(({ code }) => code))
    expect(problems.length).toBeGreaterThan(150)
    for (const code of ['job.choice', 'job.missing', 'job.ref', 'job.unknownKey', 'job.emptyCell'])
      expect(codes).toContain(code)
    for (const problem of problems) {
      const text = problemText(words, problem)
      expect(text.replaceAll(/“[^”]*”/g, ''), problem.pointer).not.toMatch(rawKey)
    }
  })

  it('says which box is empty, what comes of it, and on which sheet it is', () => {
    const said = (pointer: string, field: string) =>
      problemText(words, { code: 'job.missing', data: { field, section: 'x' }, pointer })
    const name =
      'The box “Name” is empty, and this entry of the people is left out of the plan until something stands in it. Fill it in on the sheet Days.'
    expect(said('/work/people/a2', 'name')).toBe(name)
    expect(said('/work/people/a2/name', 'name')).toBe(name)
    const kind =
      'The box “Kind of boat” is empty, and the boat cannot be planned without it. Fill it in on the sheet Boat.'
    expect(said('/work/boat', 'kind')).toBe(kind)
    expect(said('/work/boat/kind', 'kind')).toBe(kind)
    expect(said('/log/a2', 'at')).toContain('this entry of the log is left out')
  })

  it('says what is meant where a whole section is missing', () => {
    const problem = {
      code: 'job.missingSection',
      data: { keys: 'timeZone, shelter' },
      pointer: '/work/place',
    }
    expect(problemText(words, problem)).toContain('Time zone, Shelter')
  })
})

/** A sample with every cell spoilt, an empty item and an unknown cell in each collection. */
function spoilt() {
  const raw = sampleRaw('open-powerboat')
  const bad = (section: Sections[string]): Record<string, string> =>
    Object.fromEntries(
      Object.entries(section.fields).map(([key, field]) => [key, field.kind === 'text' ? '' : '¿bad?']),
    )
  const part = (from: Sections) =>
    Object.fromEntries(
      Object.entries(from).map(([name, section]) => [
        name,
        section.shape === 'one'
          ? { ...bad(section), oddKey: 'x' }
          : { spoilt: bad(section), hollow: {}, odd: { oddKey: 'x' } },
      ]),
    )
  return {
    ...raw,
    work: part(workFields),
    money: part(moneyFields),
    log: { spoilt: bad(logFields.log), hollow: {} },
  }
}
