import { describe, expect, it } from 'vitest'
import { bytesOf, least, problemsIn } from '../../test/job-documents.ts'
import { parseJob } from './index.ts'

const documentOf = (text: string, name = 'job.yaml') => parseJob(bytesOf(text), { name }).document

describe('cells', () => {
  it('are kept exactly as written, numbers and yes and no among them', () => {
    const text = least(
      [
        '  sheets:',
        '    s: {name: 007, isocyanate: yes, coverage: 9.80 m²/L, mix: "2:1", colour: "  two  spaces ", source: 1e3}',
        '    t: {isocyanate: False, colour: 0x10, name: 2027-04-12, source: .5}',
        '    u:',
        '      name: >-',
        '        folded',
        '        text',
      ].join('\n'),
    )
    expect(documentOf(text)?.work.sheets).toMatchObject({
      s: {
        name: '007',
        isocyanate: 'yes',
        coverage: '9.80 m²/L',
        mix: '2:1',
        colour: '  two  spaces ',
        source: '1e3',
      },
      t: { isocyanate: 'False', colour: '0x10', name: '2027-04-12', source: '.5' },
      u: { name: 'folded text' },
    })
  })

  it('that stand for nothing are empty', () => {
    const text = least('  people: {a: {name: ~}, b: {name: }, c: {name: null}, d: {name: "null"}}')
    const { people } = documentOf(text)!.work
    expect(Object.values(people!).map((person) => (person as { name: string }).name)).toEqual([
      '',
      '',
      '',
      'null',
    ])
  })

  it('of an alias are those of its anchor', () => {
    const text = least('  zones:\n    a: &same {kind: transom, existing: gelcoat}\n    b: *same')
    expect(documentOf(text)?.work.zones?.b).toMatchObject({ kind: 'transom', existing: 'gelcoat' })
  })
})

describe('order', () => {
  const idsOf = (text: string, section: string) =>
    Object.entries(documentOf(text)?.work[section] as Record<string, { order: string }>)
      .sort(([, a], [, b]) => (a.order < b.order ? -1 : 1))
      .map(([id]) => id)

  it('is that of the file when nothing is given, numbers as ids or not', () => {
    expect(
      idsOf(least('  people: {b: {name: B}, 10: {name: X}, a: {name: A}, 2: {name: Y}}'), 'people'),
    ).toEqual(['b', '10', 'a', '2'])
  })

  it('that is given stays, and the others keep their place between', () => {
    const text = least(
      '  people: {c: {name: C}, a: {name: A, order: m}, d: {name: D}, b: {name: B, order: p}, e: {name: E}}',
    )
    expect(idsOf(text, 'people')).toEqual(['c', 'a', 'd', 'b', 'e'])
    expect(documentOf(text)?.work.people?.a).toEqual({ name: 'A', order: 'm' })
  })

  it('is not given to entries of the log, which sort by time', () => {
    const text = `${least()}\nlog: {a: {at: "2027-04-12T08:00Z", kind: note}}`
    expect(documentOf(text)?.log?.a).toEqual({ at: '2027-04-12T08:00Z', kind: 'note' })
  })
})

describe('problems of the file', () => {
  it('are all told, each with line and column', () => {
    const text = [
      'hardstand: 1',
      'work:',
      '  job: {name: Teal Wren, name: Other, start: !date 2027-04-12}',
      '  job: {}',
      '  zones: [a]',
      '  ? [a, b]',
      '  : text',
      'wrok: {}',
    ].join('\n')
    expect(problemsIn(text).filter((line) => !line.includes('missing'))).toEqual([
      '3:26 job.duplicateKey /work/job/name',
      '3:52 job.tag /work/job/start',
      '4:3 job.duplicateKey /work/job',
      '5:3 job.shape /work/zones',
      '6:5 job.keyNotText /work',
      '8:1 job.unknownKey /wrok',
    ])
  })

  it.each([
    ['a colon in a plain text', 'work: a: b', 'job.yaml', 'BLOCK_AS_IMPLICIT_KEY'],
    ['a line that stands wrong', 'work:\n  job: {}\n boat: {}', 'job.yaml', 'BAD_INDENT'],
    ['a tab at the start of a line', 'work:\n\tjob: {}', 'job.yaml', 'TAB_AS_INDENT'],
    ['a quotation mark left open', 'work:\n  job: {name: "Teal', 'job.truncated', undefined],
    ['a bracket left open', 'work:\n  job: {name: Teal\n', 'job.truncated', undefined],
    ['a second document', `${least()}\n---\nwork: {}`, 'job.manyDocuments', undefined],
    ['an alias without its anchor', 'work: *nothing', 'job.alias', undefined],
  ])('%s is told', (_, text, code, reason) => {
    const { problems, ok } = parseJob(bytesOf(text))
    expect(ok).toBe(false)
    expect(problems.map((problem) => problem.code)).toContain(code)
    if (reason !== undefined) expect(problems[0]?.data.reason).toBe(reason)
  })

  it('a file named .json must be strict JSON, by any other name it may be YAML', () => {
    const text = '{hardstand: 1, work: {}}'
    expect(parseJob(bytesOf(text), { name: 'a.JSON' }).problems).toMatchObject([
      { code: 'job.json', line: 1, column: 2 },
    ])
    expect(parseJob(bytesOf(text), { name: 'a.yaml' }).ok).toBe(true)
    expect(parseJob(bytesOf(text)).ok).toBe(true)
  })

  it('JSON without a name is read as JSON', () => {
    expect(documentOf('{"hardstand": 1, "work": {"job": {"name": "a: b"}}}', '')?.work.job).toEqual({
      name: 'a: b',
    })
  })
})

describe('places', () => {
  it('are those of keys and values, and of the nearest key when there is nothing', () => {
    const { locate } = parseJob(bytesOf(least('  zones:\n    a~/b: {kind: transom}')))
    expect(locate('/work/zones/a~0~1b', 'key')).toEqual({ line: 7, column: 5 })
    expect(locate('/work/zones/a~0~1b/kind', 'value')).toEqual({ line: 7, column: 18 })
    expect(locate('/work/zones/a~0~1b/side/x', 'value')).toEqual({ line: 7, column: 5 })
    expect(locate('', 'value')).toEqual({ line: 1, column: 1 })
  })
})
