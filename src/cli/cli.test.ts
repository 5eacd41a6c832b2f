/** The built program, as a person runs it: answers, clear sentences for bad input, exit codes, no stack traces. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { madeEpw } from '../../test/support/made-epw.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const main = join(root, 'dist/cli/main.js')
const folder = mkdtempSync(join(tmpdir(), 'hardstand-cli-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const sample = (name: string): string => join(root, 'samples', name)

function run(args: readonly string[], input?: string) {
  const result = spawnSync(process.execPath, [main, ...args], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    timeout: 60_000,
    ...(input === undefined ? {} : { input }),
  })
  return { code: result.status, out: result.stdout, err: result.stderr }
}

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

/** A bad file gives sentences on standard error, exit code 1, and nothing that looks like a stack. */
function refused(args: readonly string[], saying: RegExp, input?: string): string {
  const { code, err } = run(args, input)
  expect(err).toMatch(saying)
  expect(err).not.toMatch(/\n\s+at |node:internal|Error:/)
  expect(code).toBe(1)
  return err
}

const powerboat = readFileSync(sample('open-powerboat.yaml'), 'utf8')

describe('bad documents', () => {
  it('an empty file', () => {
    refused(['plan', file('empty.yaml', '')], /empty/i)
  })

  it('a truncated file', () => {
    const json = run(['check', sample('open-powerboat.yaml'), '--json'])
    expect(json.code).toBe(0)
    refused(['plan', file('cut.yaml', powerboat.slice(0, 700))], /cut\.yaml/)
    refused(['plan', file('cut.json', '{"hardstand": "1", "work": {"job": {"na')], /cut\.json/)
  })

  it('a file of 50 MB', () => {
    refused(['plan', file('huge.yaml', new Uint8Array(50 * 1024 * 1024).fill(97))], /52.428.800 bytes/)
  })

  it('a binary file', () => {
    const bytes = new Uint8Array(4096).map((_, index) => (index * 7919) % 256)
    refused(['plan', file('binary.yaml', bytes)], /text|binary|UTF-8/i)
  })

  it('a document from a newer version', () => {
    refused(['plan', file('newer.yaml', powerboat.replace('hardstand: 1', 'hardstand: 99'))], /newer/i)
  })

  it('a boat with zero beam, at its line', () => {
    const path = file('flat.yaml', powerboat.replace(/beam: 2\.55 m/, 'beam: 0 m'))
    const line = powerboat.split('\n').findIndex((text) => text.includes('beam: 2.55 m')) + 1
    expect(refused(['plan', path], /flat\.yaml/)).toContain(`:${line}:`)
  })

  it('stations out of order', () => {
    const cruiser = readFileSync(sample('cruiser-topsides.yaml'), 'utf8')
    const xs = [...cruiser.matchAll(/x: ([0-9.]+ m)/g)].map((match) => match[1]!)
    expect(xs.length).toBeGreaterThan(4)
    const swapped = cruiser
      .replace(`x: ${xs[2]}`, 'x: @@')
      .replace(`x: ${xs[3]}`, `x: ${xs[2]}`)
      .replace('x: @@', `x: ${xs[3]}`)
    refused(
      ['plan', file('stations.yaml', swapped.replace(/\n {2}weather:[\s\S]*?\n(?= {2}\S|\S)/, '\n'))],
      /station/i,
    )
  })

  it('every problem at once, each with its place, and the nearest known key', () => {
    const broken = powerboat
      .replace('lengthOverall:', 'lenghtOverall:')
      .replace('draft: 0.45 m', 'draft: 7 kg')
    const err = refused(['plan', file('broken.yaml', broken)], /lenghtOverall/)
    expect(err).toMatch(/lengthOverall/)
    expect(err).toMatch(/7 kg/)
    expect(err.trim().split('\n').length).toBeGreaterThanOrEqual(2)
  })

  it('a file that is not there, a folder, and standard input', () => {
    refused(['plan', join(folder, 'nowhere.yaml')], /no file|There is no/i)
    refused(['plan', folder], /folder/)
    expect(run(['check', '-'], '')).toMatchObject({ code: 1, out: expect.stringMatching(/empty/i) })
    refused(['plan', '-'], /empty/i, '')
    expect(run(['check', '-'], powerboat).code).toBe(0)
  })
})

describe('bad weather', () => {
  const weather = readFileSync(sample('open-powerboat.weather.csv'), 'utf8')
  const lines = weather.split('\n')

  it('with a gap is refused with the gap named, and used when asked', () => {
    const path = file('gap.csv', [...lines.slice(0, 200), ...lines.slice(212)].join('\n'))
    refused(
      ['plan', sample('open-powerboat.yaml'), '--weather', path, '--now', '2027-04-10'],
      /12.h.*--gaps|--gaps/s,
    )
    refused(['weather', path], /12/)
    const used = run([
      'plan',
      sample('open-powerboat.yaml'),
      '--weather',
      path,
      '--gaps',
      '--now',
      '2027-04-10',
    ])
    expect(used.code).toBe(0)
  })

  it('beside a logger that is no table, or that hung there in another year', () => {
    const job = sample('open-powerboat.yaml')
    refused(['hours', job, '--logger', file('photo.csv', 'colour,size\nred,3\n')], /photo\.csv/)
    const other = lines.slice(0, 60).join('\n').replaceAll('2027-', '2021-')
    const { code, out } = run(['hours', job, '--logger', file('old.csv', other), '--now', '2027-04-10'])
    expect(code).toBe(0)
    expect(out).toMatch(/Logger and weather have 0/)
  })

  it('that is no weather at all', () => {
    refused(['weather', file('no.csv', 'colour,size\nred,3\n')], /no\.csv/)
    refused(['plan', sample('open-powerboat.yaml'), '--weather', file('none.csv', '')], /none\.csv/)
  })
})

describe('a typical year behind the forecast', () => {
  const year = file('typical.epw', madeEpw())
  const planned = (name: string, given: string, ...more: readonly string[]) => [
    'hours',
    file(name, powerboat),
    '--weather',
    given,
    '--now',
    '2027-04-10',
    ...more,
  ]

  it('goes on where the weather ends, each hour with where it is from', () => {
    const weather = sample('open-powerboat.weather.csv')
    const { code, out } = run(planned('goes-on.yaml', weather, '--typical', year, '--json'))
    expect(code).toBe(0)
    const { origins, spread, places, typicalFromAtMs, forecastUntilAtMs } = JSON.parse(out)
    expect(typicalFromAtMs - forecastUntilAtMs).toBe(120 * 3_600_000)
    expect(new Set(origins)).toEqual(new Set(['forecast', 'blended', 'typical']))
    expect(spread.airC.low.length).toBe(origins.filter((one: string) => one !== 'forecast').length)
    expect(places[0].goOnDays.at(-1)).toBeLessThanOrEqual(21)
  })

  it('is refused when it has dates, and beside a typical year', () => {
    const weather = sample('open-powerboat.weather.csv')
    refused(planned('dated.yaml', weather, '--typical', weather), /no typical year/)
    refused(planned('twice.yaml', year, '--typical', year), /typical year itself/)
    refused(planned('none.yaml', weather, '--typical', join(folder, 'absent.epw')), /absent\.epw/)
  })

  it('named in the job by another hash is told', () => {
    const named = powerboat.replace(
      /\n {2}weather:\n/,
      `\n  weather:\n    typicalFile: typical.epw\n    typicalHash: ${'0'.repeat(64)}\n`,
    )
    refused(
      ['hours', file('other.yaml', named), '--weather', sample('open-powerboat.weather.csv')],
      /--typical/,
    )
  })
})

describe('product sheets', () => {
  it.each(['--csv', ''])('go from one job to another as a file %s, under an id that is free', (flag) => {
    const passed = run([
      'sheets',
      sample('open-powerboat.yaml'),
      '--only',
      'hull-gloss',
      ...(flag ? [flag] : []),
    ])
    expect(passed.code).toBe(0)
    const path = file(flag ? 'passed.csv' : 'passed.json', passed.out)
    const twice = run(['sheets', sample('open-powerboat.yaml'), '--add', path])
    const job = file('with-sheets.json', twice.out)
    expect(run(['check', job]).code).toBe(0)
    const { sheets } = JSON.parse(twice.out).work
    const { order: _, ...cells } = sheets['hull-gloss']
    expect(sheets['hull-gloss-2']).toMatchObject(cells)
  })

  it('that cannot be read are refused with their line', () => {
    refused(
      ['sheets', sample('open-powerboat.yaml'), '--add', file('bad.csv', 'id,name\na,"x')],
      /bad\.csv:2:/,
    )
    refused(['sheets', sample('open-powerboat.yaml'), '--only', 'nothing'], /nothing/)
  })
})

describe('usage', () => {
  it('a wrong command, flag or value ends with exit code 2', () => {
    for (const args of [
      ['plam'],
      ['plan'],
      ['plan', 'x', '--sed', '3'],
      ['papers', sample('deck-only.yaml'), '--page', 'A9'],
    ]) {
      expect(run(args).code).toBe(2)
    }
    expect(run(['plan', sample('deck-only.yaml'), '--now', 'yesterday']).code).toBe(2)
  })

  it('every command has help', () => {
    const help = run(['--help'])
    expect(help.code).toBe(0)
    const names = [...help.out.matchAll(/^ {2}([a-z]+)/gm)]
      .map((match) => match[1]!)
      .filter((name) => name !== 'help')
    expect(names).toEqual(
      expect.arrayContaining(['new', 'check', 'plan', 'boat', 'sum', 'weather', 'serve', 'doctor']),
    )
    for (const name of names) expect(run([name, '--help']).code).toBe(0)
  }, 60_000)

  it('what comes later says so', () => {
    refused(['serve', '--host', '0.0.0.0', '--data', join(folder, 'data')], /passphrase-file/)
  })
})

describe('answers', () => {
  it.each(['boat', 'marks', 'repairs', 'buildup', 'hours', 'days', 'pours', 'stores', 'money'])(
    '%s prints lines, and one JSON object',
    (name) => {
      const args = [name, sample('open-powerboat.yaml'), '--now', '2027-04-10']
      const text = run(args)
      expect(text.code).toBe(0)
      expect(text.out.trim().split('\n').length).toBeGreaterThan(3)
      const json = JSON.parse(run([...args, '--json']).out)
      expect(json.stamp.work).toMatch(/^[0-9a-f]{64}$/)
    },
  )

  it('build-ups are suggested in figures, with the shortcuts that fail', () => {
    const args = ['buildup', sample('open-powerboat.yaml'), '--now', '2027-04-10', '--suggest']
    const text = run([...args, '--finish', 'two-part polyurethane']).out
    expect(text).toMatch(/1 × Epoxy undercoat, white, [\d.]+\sL, on P120/)
    expect(text).toMatch(/Tempting, and it fails: Two-part gloss, pale teal\./)
    const json = JSON.parse(run([...args, '--json']).out)
    expect(json.suggestions[0].builds[0]).toMatchObject({ best: ['life'] })
    expect(json.suggestions[0].builds[0].costCoins).toBeGreaterThan(1000)
    expect(run([...args, '--finish', 'gelcoat']).out).toMatch(/None of the sheets is such a finish/)
  })

  it('a zone is measured by its corners, and pads are listed and left out', () => {
    const corner = (at: number, x: string, y: string) =>
      `    sole-${at}: {zone: sole, fromStern: ${x}, offCentre: ${y}}\n`
    const deck = [
      'hardstand: 1\nwork:\n  job: {name: Test, start: 2027-05-03}\n',
      '  boat: {kind: open powerboat, lengthOverall: 6 m, beam: 2.4 m, freeboardStem: 1.1 m}\n',
      '  place: {shelter: shed, timeZone: UTC}\n  zones:\n',
      '    sole: {name: Sole, kind: cockpit sole, mirror: yes}\n    bottom: {kind: bottom}\n',
      '    pads: {name: Pads, kind: pad, count: 6}\n  corners:\n',
      corner(1, '1 m', '0 m') +
        corner(2, '3 m', '0 m') +
        corner(3, '3 m', '60 cm') +
        corner(4, '1 m', '60 cm'),
    ].join('')
    const args = ['boat', file('deck.yaml', deck), '--now', '2027-04-10']
    const text = run(args).out
    expect(text).toMatch(/Sole\s+2\.4\sm²\s+6\.4\sm\s+measured\s+measured shape/)
    expect(text).toMatch(/HIDDEN BY PADS.*\s+6 × Pads\s+0\.6\sm²\s+assumed\s+of the bottom/)
    const json = JSON.parse(run([...args, '--json']).out)
    expect(json.zones[0]).toMatchObject({ id: 'sole', perimeterM: 6.4, confidence: 'measured', how: 'shape' })
    expect(json.pads).toMatchObject([{ id: 'pads', count: 6, confidence: 'assumed', hides: 'bottom' }])
  })

  it('the sample jobs are sound', () => {
    expect(run(['doctor']).code).toBe(0)
  })

  it('a new job plans, and is never written over', () => {
    const path = join(folder, 'mine.json')
    const args = [
      'new',
      path,
      '--name',
      'My boat',
      '--length',
      '19 ft',
      '--beam',
      `7'2"`,
      '--freeboard',
      '3 ft',
      '--time-zone',
      'Europe/Paris',
    ]
    expect(run(args)).toMatchObject({ code: 0 })
    expect(run(args).code).toBe(1)
    expect(run(['plan', path, '--now', '2027-05-01']).code).toBe(0)
    refused(
      [
        'new',
        join(folder, 'bad.json'),
        '--name',
        'x',
        '--length',
        '19 kg',
        '--beam',
        '7 ft',
        '--freeboard',
        '3 ft',
      ],
      /19 kg/,
    )
  })

  it('hashes of inputs that did not change stay the same', () => {
    const stamp = () =>
      JSON.parse(run(['days', sample('deck-only.yaml'), '--now', '2027-06-01', '--json']).out).stamp
    expect(stamp()).toEqual(stamp())
  })
})
