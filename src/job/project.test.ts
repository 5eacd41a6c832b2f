import { describe, expect, it } from 'vitest'
import { bytesOf, least, problemsIn } from '../../test/job-documents.ts'
import { type ProjectOptions, parseJob, project, type RawDocument } from './index.ts'

const rawOf = (text: string): RawDocument => parseJob(bytesOf(text)).document!
const read = (text: string, options: Partial<ProjectOptions> = {}) => {
  const { document, locate } = parseJob(bytesOf(text))
  return project(document!, { strict: true, locate, ...options })
}

describe('values', () => {
  it('are in SI with their text and how sure they are', () => {
    const { boat } = read(
      least().replace(
        '{kind: open powerboat}',
        '{kind: open powerboat, lengthOverall: 25 ft 4 in, beam: about 2.5 m}',
      ),
    ).work
    expect(boat.lengthOverall).toEqual({
      value: expect.closeTo(7.7216, 9),
      text: '25 ft 4 in',
      certainty: 'measured',
    })
    expect(boat.beam).toEqual({ value: 2.5, text: 'about 2.5 m', certainty: 'assumed' })
  })

  it.each(['~2.5 m', '2.5 m?', 'about 2.5 m'])('%j is assumed', (beam) => {
    const { boat } = project(
      { hardstand: '1', work: { boat: { kind: 'dinghy', beam } } },
      { strict: true },
    ).work
    expect(boat.beam).toMatchObject({ value: 2.5, certainty: 'assumed' })
  })

  it('of every other kind', () => {
    const { work, money, log } = read(
      `${least(
        [
          '  people: {ada: {name: Ada Fern, trainedUntil: 2029-03-31, sensitised: no}}',
          '  shifts: {s: {person: ada, days: "Tue, Thu", from: 6:30 pm, until: "21:00"}}',
          '  sheets: {s: {mix: "4:1:1", potLife: "10C: 3h, 20C: 2h", family: ONE-PART}, t: {mix: 1}}',
          '  zones: {a: {kind: hatch, count: 4}}',
          '  layers: {l: {zones: "a", sheet: s, coats: 2, additive: 4 fl oz/qt}}',
          "  fittings: {p: {name: Plate, zone: a, plan: leave, kind: builder's plate}}",
          '  packs: {p: {sheet: s, volume: 1 L}}',
        ].join('\n'),
      )}\nmoney: {terms: {currency: EUR}, prices: {p: {pack: p, price: 12.5}, q: {pack: p, price: "€ 3"}}}\nlog: {a: {at: "2027-04-12T08:00Z", kind: done}}`,
    )
    expect(work.people[0]).toEqual({
      id: 'ada',
      name: 'Ada Fern',
      trainedUntil: '2029-03-31',
      sensitised: false,
    })
    expect(work.shifts[0]).toEqual({ id: 's', person: 'ada', days: [2, 4], from: '18:30', until: '21:00' })
    expect(work.sheets.map(({ mix }) => mix?.parts)).toEqual([[4, 1, 1], [1]])
    expect(work.sheets[0]?.family).toBe('one-part')
    expect(work.sheets[0]?.potLife).toEqual([
      { airC: 10, hours: 3 },
      { airC: 20, hours: 2 },
    ])
    expect(work.layers[0]).toMatchObject({ zones: ['a'], coats: 2, additive: { value: 0.125 } })
    expect(work.fittings[0]?.kind).toBe('builder’s plate')
    expect(money?.prices.map(({ price }) => price)).toEqual([
      { coins: 1250, currency: 'EUR', text: '12.5' },
      { coins: 300, currency: 'EUR', text: '€ 3' },
    ])
    expect(log[0]?.kind).toBe('done')
  })

  it('that may be negative are, the others are not', () => {
    const text = least(
      [
        '  stations: {a: {x: 0 m}, b: {x: 2 m}, c: {x: -4 m}}',
        '  points:',
        '    a1: {station: a, halfBreadth: 0 mm, height: -300 mm}',
        '    b1: {station: b, halfBreadth: -1 mm, height: 1 m}',
        '  marks: {m: {kind: boot stripe, zone: z, heightLow: -20 mm, widthLow: -20 mm}}',
        '  zones: {z: {kind: boot stripe}}',
      ].join('\n'),
    )
    expect(problemsIn(text).filter((line) => line.includes('units.'))).toEqual([
      '6:47 units.negative /work/stations/c/x',
      '9:35 units.negative /work/points/b1/halfBreadth',
      '10:72 units.negative /work/marks/m/widthLow',
    ])
  })
})

describe('collections', () => {
  it('are sorted by order, then id, whatever the order of the map, and hold no removed item', () => {
    const people = {
      d: { name: 'D', order: 'b' },
      a: { name: 'A' },
      c: { name: 'C', order: 'b' },
      x: { name: 'X', gone: 'true' },
      b: { name: 'B', order: 'a' },
    }
    const list = project({ hardstand: '1', work: { people } }, { strict: true }).work.people
    expect(list.map(({ id }) => id)).toEqual(['b', 'c', 'd', 'a'])
  })

  it('a removed item is not looked at', () => {
    const raw = {
      hardstand: '1',
      work: { people: { X: { gone: true, name: 7, foo: [] } } },
    } as unknown as RawDocument
    expect(
      project(raw, { strict: true }).problems.filter(({ pointer }) => pointer.includes('people')),
    ).toEqual([])
  })

  it.each(['Aft', 'a b', 'a_b', '-a', 'é', 'a'.repeat(65), ''])('%j is no id', (id) => {
    const raw = { hardstand: '1', work: { zones: { [id]: { kind: 'transom' } } } }
    const { work, problems } = project(raw, { strict: false })
    expect(work.zones).toEqual([])
    expect(problems.map(({ code }) => code)).toContain('job.badId')
  })

  it('the log is by time, whatever the offset', () => {
    const { log } = read(
      `${least()}\nlog:\n  a: {at: "2027-04-12T09:00+02:00", kind: note}\n  b: {at: "2027-04-12T07:30Z", kind: note}\n  c: {at: "2027-04-12T07:59+00:00", kind: note}`,
    )
    expect(log.map(({ id }) => id)).toEqual(['a', 'b', 'c'])
  })
})

describe('unknown sections and cells', () => {
  const text = least('  zoness: {}\n  zones: {a: {kind: transom, exsiting: gelcoat}}')

  it('are errors in a file and name the nearest known', () => {
    const { problems } = read(text)
    expect(problems.map(({ code, severity, data }) => [code, severity, data.nearest])).toEqual([
      ['job.unknownKey', 'error', 'zones'],
      ['job.unknownKey', 'error', 'existing'],
    ])
  })

  it('are notes in a shared document, which keeps them', () => {
    const raw = rawOf(text)
    expect(project(raw, { strict: false }).problems.map(({ severity }) => severity)).toEqual(['note', 'note'])
    expect(raw.work.zones?.a).toMatchObject({ exsiting: 'gelcoat' })
  })
})

describe('a bad cell', () => {
  it('that is needed takes its item with it, any other is left out alone', () => {
    const { work, problems } = read(
      least('  zones: {a: {kind: transum}, b: {kind: transom, count: none, length: 2}}'),
    )
    expect(work.zones).toEqual([{ id: 'b', kind: 'transom' }])
    expect(problems.map(({ pointer }) => pointer)).toEqual([
      '/work/zones/a/kind',
      '/work/zones/b/count',
      '/work/zones/b/length',
    ])
  })

  it('of job, boat or place has a stand-in, and the document is not complete', () => {
    const { work, complete, problems } = read('hardstand: 1\nwork: {job: {name: Teal}, boat: {kind: canoe}}')
    expect(work.job).toEqual({ name: 'Teal', start: '1970-01-01' })
    expect(work.boat.kind).toBe('open powerboat')
    expect(work.place).toEqual({ shelter: 'open', timeZone: 'UTC' })
    expect(complete).toBe(false)
    expect(problems.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
      'job.missingSection /work/place',
      'job.missing /work/job',
      'job.choice /work/boat/kind',
    ])
  })

  it.each([
    ['  shifts: {s: {person: ada, days: Mon, from: "22:00", until: "06:00"}}', 'job.shiftEnds', 'shifts'],
    ['  shifts: {s: {person: ada, days: Mon, from: "08:00", until: "08:00"}}', 'job.shiftEnds', 'shifts'],
    ['  closures: {s: {from: 2027-05-02, until: 2027-05-01}}', 'job.closureEnds', 'closures'],
  ] as const)('%s is refused', (line, code, section) => {
    const { work, problems } = read(least(`  people: {ada: {name: Ada}}\n${line}`))
    expect(problems.map((problem) => problem.code)).toEqual([code])
    expect(work[section]).toEqual([])
  })

  it('a closure may be of one day, and the launch on the first day', () => {
    const text = least('  closures: {s: {from: 2027-05-02, until: 2027-05-02}}').replace(
      'start: 2027-04-12',
      'start: 2027-04-12, launch: 2027-04-12',
    )
    expect(read(text).problems).toEqual([])
  })

  it('a launch before the start is left out', () => {
    const { work, problems } = read(
      least().replace('start: 2027-04-12', 'start: 2027-04-12, launch: 2027-04-11'),
    )
    expect(problems.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
      'job.launchBeforeStart /work/job/launch',
    ])
    expect(work.job).not.toHaveProperty('launch')
  })

  it.each([
    ['zones', 'transom', { kind: 'transom', area: '0 m²' }, 'area'],
    ['zones', 'transom', { kind: 'transom', length: '700 m' }, 'length'],
    ['sheets', 's', { coverage: '9.8 m²/ml' }, 'coverage'],
    ['sheets', 's', { dryFilm: '40 mm' }, 'dryFilm'],
    ['sheets', 's', { volumeSolids: '0 %' }, 'volumeSolids'],
    ['sheets', 's', { airLeast: '100 °C' }, 'airLeast'],
    ['packs', 'p', { sheet: 's', volume: '0 L' }, 'volume'],
  ])('in %s a slip like %s %j is out of range', (section, id, cells, key) => {
    const raw = { hardstand: '1', work: { sheets: { s: {} }, [section]: { [id]: cells } } }
    const { problems } = project(raw as RawDocument, { strict: true })
    expect(problems.filter(({ pointer }) => pointer === `/work/${section}/${id}/${key}`)).toMatchObject([
      { code: 'units.outOfRange' },
    ])
  })

  it.each(['Europe/Stockholm', 'America/Argentina/Ushuaia', 'UTC', 'Etc/GMT+3'])(
    '%s has the form of a time zone',
    (zone) => expect(read(least().replace('Europe/Stockholm', zone)).problems).toEqual([]),
  )

  it.each(['Europe/Stock holm', 'UTC+2', '../../etc', '5'])('%j has not', (zone) =>
    expect(read(least().replace('Europe/Stockholm', `"${zone}"`)).problems.map(({ code }) => code)).toEqual([
      'job.pattern',
    ]),
  )

  it('an odd clock table is only a note and stays', () => {
    const { work, problems } = read(least('  sheets: {s: {potLife: "5C: 1h, 15C: 2h"}}'))
    expect(problems.map(({ code, severity }) => [code, severity])).toEqual([['job.clockOdd', 'note']])
    expect(work.sheets[0]?.potLife).toHaveLength(2)
  })

  it('an empty cell counts as left out and is noted', () => {
    const { work, problems } = read(least('  zones: {a: {kind: transom, name: }}'))
    expect(work.zones).toEqual([{ id: 'a', kind: 'transom' }])
    expect(problems.map(({ code, severity }) => [code, severity])).toEqual([['job.emptyCell', 'note']])
  })

  it('a price in another currency than the terms is refused', () => {
    const { money, problems } = read(
      `${least()}\nmoney: {terms: {currency: EUR}, rates: {l: {role: lead, hourly: GBP 40}}}`,
    )
    expect(problems.map(({ code }) => code)).toEqual(['job.currency'])
    expect(money?.rates).toEqual([])
  })
})

describe('references', () => {
  it('that lead nowhere are told with the nearest id, and dropped with the item when it needs them', () => {
    const { work, problems } = read(
      least(
        [
          '  zones: {foredeck: {kind: foredeck}}',
          '  sheets: {primer: {name: P}}',
          '  layers:',
          '    a: {zones: "foredeck, fordeck", sheet: primer, coats: 1}',
          '    b: {zones: nowhere, sheet: primer, coats: 1}',
          '    c: {zones: foredeck, sheet: primmer, coats: 1}',
          '  findings: {f: {zone: foredeck, kind: crack, hours: 1 h, sheet: nothing}}',
        ].join('\n'),
      ),
    )
    expect(work.layers).toEqual([{ id: 'a', zones: ['foredeck'], sheet: 'primer', coats: 1 }])
    expect(work.findings[0]).not.toHaveProperty('sheet')
    expect(problems.map(({ pointer, data }) => [pointer, data.found, data.nearest])).toEqual([
      ['/work/layers/a/zones', 'fordeck', 'foredeck'],
      ['/work/layers/b/zones', 'nowhere', undefined],
      ['/work/layers/c/sheet', 'primmer', 'primer'],
      ['/work/findings/f/sheet', 'nothing', undefined],
    ])
  })

  it('to the catalogue are checked only when its ids are given', () => {
    const text = `${least('  sheets: {s: {like: two-part-finsh}}')}\nmoney: {terms: {currency: EUR}, consumablePrices: {g: {consumable: glove, price: 1}}}`
    expect(read(text).problems).toEqual([])
    const { problems, work } = read(text, { catalogueIds: ['two-part-finish'], consumableIds: ['gloves'] })
    expect(problems.map(({ data }) => data.nearest)).toEqual(['two-part-finish', 'gloves'])
    expect(work.sheets).toEqual([{ id: 's' }])
  })

  it('are told of an item that is left out anyway, too', () => {
    const { problems } = read(least('  layers: {a: {zones: nowhere, sheet: none, coats: many}}'))
    expect(problems.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
      'job.ref /work/layers/a/zones',
      'job.ref /work/layers/a/sheet',
      'job.count /work/layers/a/coats',
    ])
  })

  it('to an item that could not be read lead nowhere, step by step', () => {
    const { work, money } = read(
      `${least('  sheets: {s: {name: S, gone: true}}\n  packs: {p: {sheet: s, volume: 1 L}}')}\nmoney: {terms: {currency: EUR}, prices: {x: {pack: p, price: 1}}}`,
    )
    expect([work.sheets, work.packs, money?.prices]).toEqual([[], [], []])
  })
})

describe('stations', () => {
  const stations = (...lines: readonly string[]) =>
    least(
      [
        '  stations: {a: {x: 0 m}, b: {x: 2 m}, c: {x: 4 m}}',
        '  points:',
        ...['a', 'b', 'c'].map((id) => `    ${id}1: {station: ${id}, halfBreadth: 1 m, height: 0 m}`),
        ...lines,
      ].join('\n'),
    )

  it('of which there are three with a point each are kept', () => {
    const { work, problems } = read(stations())
    expect(problems).toEqual([])
    expect([work.stations.length, work.points.length]).toEqual([3, 3])
  })

  it('of which there are only two are all left out, so that the sizes count', () => {
    const { work, problems } = read(
      stations()
        .replace(', c: {x: 4 m}', '')
        .replace(/\n {4}c1.*/, ''),
    )
    expect(problems.map(({ code }) => code)).toEqual(['job.stationCount'])
    expect([work.stations, work.points]).toEqual([[], []])
  })

  it('without a point, or where another is, are left out with their points', () => {
    const text = stations()
      .replace('c: {x: 4 m}', 'c: {x: 4 m}, d: {x: 6 m}, e: {x: 2000 mm}')
      .replace('    a1:', '    e1: {station: e, halfBreadth: 1 m, height: 0 m}\n    a1:')
    const { work, problems } = read(text)
    expect(problems.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
      'job.stationPoints /work/stations/d',
      'job.stationTwice /work/stations/e/x',
    ])
    expect(work.stations.map(({ id }) => id)).toEqual(['a', 'b', 'c'])
    expect(work.points.map(({ station }) => station)).not.toContain('e')
  })
})

describe('the version', () => {
  it.each([
    ['hardstand: 1', undefined, false],
    ['hardstand: 2', 'job.newerVersion', true],
    ['hardstand: one', 'job.version', false],
    ['hardstand: 0', 'job.version', false],
    ['# none', 'job.noVersion', false],
  ])('%s', (line, code, readOnly) => {
    const text = least().replace('hardstand: 1', line)
    const strict = read(text)
    expect(strict.problems.map((problem) => problem.code)).toEqual(code === undefined ? [] : [code])
    expect(strict.problems.every(({ severity }) => severity === 'error')).toBe(true)
    expect(strict.readOnly).toBe(readOnly)
    const shared = read(text, { strict: false })
    expect(shared.problems.every(({ severity }) => severity === 'note')).toBe(true)
    expect(shared.readOnly).toBe(readOnly)
  })

  it('of a newer document makes its unknown cells notes, even in a file', () => {
    const { problems } = read(least('  sails: {main: {area: 20 m²}}').replace('hardstand: 1', 'hardstand: 2'))
    expect(problems.map(({ code, severity }) => [code, severity])).toEqual([
      ['job.newerVersion', 'error'],
      ['job.unknownKey', 'note'],
    ])
  })

  it('of an older document runs it through the migrations first', () => {
    const migrations = {
      newest: 2,
      steps: [
        {
          from: 1,
          apply: ({ work, ...rest }: RawDocument): RawDocument => {
            const { yard, ...others } = work
            return { ...rest, work: { ...others, ...(yard ? { place: yard } : {}) } }
          },
        },
      ],
    }
    const text = least().replace('  place:', '  yard:')
    const { work, problems } = read(text, { migrations })
    expect(problems).toEqual([])
    expect(work.place.shelter).toBe('cover')
  })
})

describe('without money', () => {
  it('there is no money in the projection, and nothing is missing', () => {
    const projected = read(least())
    expect(projected).not.toHaveProperty('money')
    expect(projected.problems).toEqual([])
  })

  it('with a part of it that lacks the currency there are stand-ins and an error', () => {
    const { money, problems, complete } = read(`${least()}\nmoney: {}`)
    expect(money?.terms.currency).toBe('XXX')
    expect(problems.map(({ code }) => code)).toEqual(['job.missingSection'])
    expect(complete).toBe(false)
  })
})
