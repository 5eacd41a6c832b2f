import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { createGrid, createOpenings, type GridSpan } from './grid.ts'
import { type PlaceInput, placeSteps } from './place-steps.ts'
import type { HourVerdicts, Person, Step, Verdict } from './step.ts'

const day = 24 * 60
/** A weekday shift from eight to four on every day from day zero. */
const shifts = (days: number, from = 8 * 60, until = 16 * 60) =>
  Array.from({ length: days }, (_, index) => ({
    startMinute: index * day + from,
    endMinute: index * day + until,
  }))
const ada: Person = { id: 'ada', shifts: shifts(30) }
const ben: Person = { id: 'ben', shifts: shifts(30) }

const step = (id: string, over: Partial<Step> = {}): Step => ({
  id,
  kind: 'work',
  paces: [{ crew: 1, personMinutes: 60 }],
  inOneGo: false,
  setUpMinutes: 0,
  cleanUpMinutes: 0,
  needs: [],
  air: 'boat',
  dust: 'neither',
  barred: [],
  standsOn: [],
  ...over,
})

const hours = (of: (hour: number) => Verdict, count = 30 * 24): HourVerdicts => ({
  firstMinute: 0,
  verdicts: Array.from({ length: count }, (_, hour) => of(hour)),
})

type Over = Partial<
  GridSpan &
    Pick<PlaceInput, 'airAt' | 'done' | 'people'> & { readonly hours: ReadonlyMap<string, HourVerdicts> }
>

const place = (steps: readonly Step[], over: Over = {}) => {
  const span: GridSpan = { firstMinute: 0, lastMinute: 30 * day, unknownOpen: over.unknownOpen ?? [] }
  const people = over.people ?? [ada]
  const openings = new Map([...(over.hours ?? [])].map(([key, of]) => [key, createOpenings(of, span)]))
  return placeSteps({
    steps,
    people,
    grid: createGrid({ people, span, openings }),
    firstMinute: 0,
    patienceMinutes: 7 * day,
    airAt: over.airAt ?? new Map([['boat', () => 20]]),
    done: over.done ?? new Map(),
  })
}

const sureOn = (sureDay: number) => hours((hour) => (Math.floor(hour / 24) >= sureDay ? 'go' : 'risky'))

const shutsAfterTwoDays = { table: [{ airC: 20, hours: 48 }], keyMinutes: 60, keyAfter: [], barred: [] }

const after = (id: string, minutes: number) => ({ step: id, wait: { kind: 'fixed' as const, minutes } })

describe('placeSteps', () => {
  it('sets work at the start of the first shift and the next right behind it', () => {
    const { placed } = place([step('a'), step('b')])
    expect(placed.map((one) => [one.step, one.startMinute, one.endMinute])).toEqual([
      ['a', 480, 540],
      ['b', 540, 600],
    ])
  })

  it('splits long work over shifts and never works outside them', () => {
    const { placed } = place([step('long', { paces: [{ crew: 1, personMinutes: 600 }] })])
    expect(placed[0]?.pieces.map((piece) => [piece.startMinute, piece.endMinute])).toEqual([
      [480, 960],
      [day + 480, day + 600],
    ])
  })

  it('shares work evenly between two people when it may', () => {
    const paces = [
      { crew: 1, personMinutes: 240 },
      { crew: 2, personMinutes: 240 },
    ]
    const { placed } = place([step('shared', { paces })], { people: [ada, ben] })
    expect(placed[0]).toMatchObject({ startMinute: 480, endMinute: 600 })
    expect(placed[0]?.pieces[0]?.people).toEqual(['ada', 'ben'])
  })

  it('waits for the day the second pair of hands is there when a step needs two', () => {
    const saturdays: Person = { id: 'ben', shifts: shifts(30).filter((_, index) => index % 7 === 5) }
    const { placed } = place([step('bolt', { paces: [{ crew: 2, personMinutes: 60 }] })], {
      people: [ada, saturdays],
    })
    expect(placed[0]?.startMinute).toBe(5 * day + 480)
  })

  it('keeps a coat in one go: set-up, work and clean-up in one shift, the work in go hours only', () => {
    const coat = step('coat', {
      inOneGo: true,
      paces: [{ crew: 1, personMinutes: 120 }],
      setUpMinutes: 45,
      cleanUpMinutes: 30,
      hoursKey: 'gloss',
    })
    const open = hours((hour) => (hour % 24 === 10 || hour % 24 === 11 ? 'go' : 'no'))
    const { placed } = place([coat], { hours: new Map([['gloss', open]]) })
    // The work begins at ten sharp, so the wiping and mixing begins three quarters of an hour before.
    expect(placed[0]).toMatchObject({ startMinute: 555, endMinute: 750, verdict: 'go' })
  })

  it('takes a risky hour only when no sure one comes within the patience', () => {
    const coat = step('coat', { inOneGo: true, hoursKey: 'gloss' })
    const soon = place([coat], { hours: new Map([['gloss', sureOn(5)]]) })
    const late = place([coat], { hours: new Map([['gloss', sureOn(20)]]) })
    expect(soon.placed[0]).toMatchObject({ startMinute: 5 * day + 480, verdict: 'go' })
    expect(late.placed[0]).toMatchObject({ startMinute: 480, verdict: 'risky' })
  })

  it('uses an unknown hour only in the stretches that were opened for it', () => {
    const coat = step('coat', { inOneGo: true, hoursKey: 'gloss' })
    const unknownOpen = [{ startMinute: 3 * day + 600, endMinute: 3 * day + 960 }]
    const { placed } = place([coat], { hours: new Map([['gloss', hours(() => 'unknown')]]), unknownOpen })
    expect(placed[0]).toMatchObject({ startMinute: 3 * day + 600, verdict: 'unknown' })
  })

  it('lets a clock run with the temperature of the hours it passes', () => {
    const table = [
      { airC: 10, hours: 20 },
      { airC: 20, hours: 10 },
    ]
    const need = { step: 'a', wait: { kind: 'clock' as const, clock: 'recoatLeast', table } }
    // Ten hours at 10 °C are half of it, then five at 20 °C the rest: from 09:00 that is midnight.
    const airAt = new Map([['boat', (hour: number) => (hour < 19 ? 10 : 20)]])
    const { placed } = place([step('a'), step('b', { needs: [need] })], { airAt })
    expect(placed[1]?.heldBy).toEqual({ step: 'a', untilMinute: 24 * 60 })
    expect(placed[1]?.startMinute).toBe(day + 480)
  })

  it('lays a coat wet on wet, or after the hole in its window, and never in it', () => {
    // An alkyd: wet on wet inside 4 h, then not for 6 d at 23 °C.
    const holes = [{ shuts: [{ airC: 20, hours: 4 }], opens: [{ airC: 20, hours: 144 }] }]
    const first = step('a', { inOneGo: true })
    const startAfter = (waitHours: number) =>
      place([first, step('b', { inOneGo: true, needs: [{ ...after('a', waitHours * 60), holes }] })])
        .placed[1]!.startMinute - 540
    expect(startAfter(1)).toBe(60)
    expect(startAfter(4)).toBe(240)
    // Six days after nine o'clock.
    expect(startAfter(5)).toBe(144 * 60)
    expect(startAfter(150)).toBeGreaterThanOrEqual(150 * 60)
  })

  it('never gets out of a hole that the cold keeps open', () => {
    const holes = [
      {
        shuts: [{ airC: 20, hours: 1 }],
        opens: [
          { airC: 20, hours: 144 },
          { airC: 30, hours: 96 },
        ],
      },
    ]
    const coat = step('b', { inOneGo: true, needs: [{ ...after('a', 5 * 60), holes }] })
    const { unplaced } = place([step('a', { inOneGo: true }), coat], {
      airAt: new Map([['boat', () => 5]]),
    })
    expect(unplaced).toEqual([{ step: 'b', reason: 'clock' }])
  })

  it('puts sanding in when the window has shut, and the coat behind it', () => {
    const window = { ...shutsAfterTwoDays, keyMinutes: 90 }
    const coat = step('b', { inOneGo: true, needs: [{ ...after('a', 72 * 60), window }] })
    const { placed, keyed } = place([step('a', { inOneGo: true }), coat])
    expect(keyed).toEqual([{ forStep: 'b', after: 'a', shutMinute: 540 + 48 * 60 }])
    expect(placed.map((one) => one.step)).toEqual(['a', 'key:b', 'b'])
    expect(placed[2]!.startMinute).toBeGreaterThanOrEqual(placed[1]!.endMinute)
  })

  it('keys no surface before it can be sanded, and none that the cold keeps soft', () => {
    const table = [
      { airC: 10, hours: 200 },
      { airC: 20, hours: 100 },
    ]
    const window = { ...shutsAfterTwoDays, keyAfter: [{ kind: 'clock' as const, clock: 'dryToSand', table }] }
    const coatedAfter = (waitHours: number, airC: number) => {
      const coat = step('b', { inOneGo: true, needs: [{ ...after('a', waitHours * 60), window }] })
      return place([step('a', { inOneGo: true }), coat], { airAt: new Map([['boat', () => airC]]) })
    }
    expect(coatedAfter(72, 20).placed[1]).toMatchObject({ step: 'key:b', startMinute: 540 + 100 * 60 })
    expect(coatedAfter(200, 5).unplaced).toEqual([{ step: 'b', reason: 'clock' }])
  })

  it('keys a surface as late as the coat allows, by somebody who may', () => {
    const window = { ...shutsAfterTwoDays, barred: ['ada'] }
    const needs = [{ ...after('a', 72 * 60), window }]
    const coat = step('b', { inOneGo: true, needs, hoursKey: 'gloss', barred: ['ada'] })
    const { placed } = place([step('a', { inOneGo: true }), coat], {
      people: [ada, ben],
      hours: new Map([['gloss', sureOn(6)]]),
    })
    expect(placed.at(-1)).toMatchObject({ step: 'b', startMinute: 6 * day + 480 })
    expect(placed[1]).toMatchObject({ step: 'key:b', endMinute: 5 * day + 960, keyFor: 'b' })
    expect(placed[1]?.pieces[0]?.people).toEqual(['ben'])
  })

  it('makes no dust where a coat is wet, and coats nothing that would still be wet when dust is made', () => {
    const coat = step('coat', { inOneGo: true, dust: 'minds', wet: [{ airC: 20, hours: 4 }] })
    const sand = step('sand', { dust: 'makes' })
    expect(place([coat, sand]).placed.map((one) => one.startMinute)).toEqual([480, 780])
    expect(place([sand, coat]).placed.map((one) => one.startMinute)).toEqual([480, 540])
    const elsewhere = { ...sand, air: 'indoors' }
    expect(place([coat, elsewhere]).placed.map((one) => one.startMinute)).toEqual([480, 540])
  })

  it('minds dust for as long as the coat is wet in the air it gets', () => {
    const coat = step('coat', { inOneGo: true, dust: 'minds', wet: [{ airC: 20, hours: 2 }] })
    const sand = step('sand', { dust: 'makes' })
    const startAt = (airC: number) =>
      place([coat, sand], { airAt: new Map([['boat', () => airC]]) }).placed[1]?.startMinute
    expect(startAt(20)).toBe(540 + 120)
    expect(startAt(10)).toBe(540 + 240)
    expect(startAt(0)).toBe(day + 480)
  })

  it('keeps feet off a coated floor until it can be trodden, and coats none that is stood on meanwhile', () => {
    const sole = step('sole', {
      inOneGo: true,
      tread: { floors: ['sole'], table: [{ airC: 20, hours: 3 }] },
    })
    const side = step('side', { standsOn: ['sole'] })
    expect(place([sole, side]).placed.map((one) => one.startMinute)).toEqual([480, 540 + 180])
    expect(place([side, sole]).placed.map((one) => one.startMinute)).toEqual([480, 540])
    const later = step('side', { standsOn: ['sole'], needs: [after('first', 120)] })
    const first = step('first')
    const starts = place([first, later, sole]).placed.map((one) => one.startMinute)
    expect(starts).toEqual([480, 660, 720])
    const other = step('other', { standsOn: ['side deck'] })
    expect(place([sole, other]).placed[1]?.startMinute).toBe(540)
  })

  it('minds a coat that is on already for as long as is left of its clocks', () => {
    const coat = step('coat', {
      inOneGo: true,
      dust: 'minds',
      wet: [{ airC: 20, hours: 12 }],
      tread: { floors: ['sole'], table: [{ airC: 20, hours: 14 }] },
    })
    const done = new Map([['coat', { startMinute: -240, endMinute: -120 }]])
    const starts = (one: Step) => place([coat, one], { done }).placed[1]?.startMinute
    expect(starts(step('sand', { dust: 'makes' }))).toBe(600)
    expect(starts(step('side', { standsOn: ['sole'] }))).toBe(720)
    expect(starts(step('other'))).toBe(480)
  })

  it('lets one begin where the other has only a scrap of time', () => {
    const early: Person = { id: 'ben', shifts: [{ startMinute: 480, endMinute: 495 }] }
    const paces = [
      { crew: 1, personMinutes: 120 },
      { crew: 2, personMinutes: 120 },
    ]
    const { placed } = place([step('shared', { paces })], { people: [ada, early] })
    expect(placed[0]?.startMinute).toBe(480)
  })

  it('gives a step to nobody who is barred from it, and says when that leaves nobody', () => {
    const barred = step('gloss', { barred: ['ada'] })
    expect(place([barred], { people: [ada, ben] }).placed[0]?.pieces[0]?.people).toEqual(['ben'])
    expect(place([barred]).unplaced).toEqual([{ step: 'gloss', reason: 'people' }])
  })

  it('has nobody at work while what they are barred from is done or wet, whichever was placed first', () => {
    const wet = [{ airC: 20, hours: 4 }]
    const gloss = step('gloss', { inOneGo: true, barred: ['ada'], dust: 'minds', wet })
    const tape = step('tape', { barred: ['ben'] })
    const people = [ada, ben]
    const startsOf = (steps: readonly Step[]) => place(steps, { people }).placed.map((one) => one.startMinute)
    expect(startsOf([gloss, tape])).toEqual([480, 540 + 4 * 60])
    expect(startsOf([tape, gloss])).toEqual([480, 540])
    expect(
      startsOf([step('a', { inOneGo: true, needs: [] }), gloss, step('later', { barred: ['ben'] })]),
    ).toEqual([480, 540, 840])
  })

  it('takes what has happened from the log and plans on from there', () => {
    const done = new Map([['a', { startMinute: 100, endMinute: 2000 }]])
    const { placed } = place([step('a'), step('b', { needs: [after('a', 0)] })], { done })
    expect(placed[0]).toMatchObject({ step: 'a', done: true, endMinute: 2000, pieces: [] })
    expect(placed[1]?.startMinute).toBeGreaterThanOrEqual(2000)
  })

  it('says why a step has no place: the cold stops its clock, or the time is too short, or what it needs has none', () => {
    const table = [
      { airC: 10, hours: 12 },
      { airC: 20, hours: 6 },
    ]
    const cold = step('b', { needs: [{ step: 'a', wait: { kind: 'clock', clock: 'recoatLeast', table } }] })
    const chained = step('c', { needs: [after('b', 0)] })
    const frozen = place([step('a'), cold, chained], { airAt: new Map([['boat', () => 2]]) })
    expect(frozen.unplaced).toEqual([
      { step: 'b', reason: 'clock' },
      { step: 'c', reason: 'needs' },
    ])
    const pair = step('pair', { paces: [{ crew: 2, personMinutes: 60 }] })
    const evenings: Person = { id: 'ben', shifts: shifts(30, 1000, 1200) }
    expect(place([pair], { people: [ada, evenings] }).unplaced).toEqual([
      { step: 'pair', reason: 'together' },
    ])
    const long = place([step('year', { paces: [{ crew: 1, personMinutes: 365 * 480 }] })])
    expect(long.unplaced).toEqual([{ step: 'year', reason: 'horizon' }])
  })
})

describe('placeSteps on any list of steps', () => {
  const anyStep = fc.record({
    minutes: fc.integer({ min: 1, max: 900 }),
    inOneGo: fc.boolean(),
    dust: fc.constantFrom('makes' as const, 'minds' as const, 'neither' as const),
    crew: fc.integer({ min: 1, max: 2 }),
    wait: fc.integer({ min: 0, max: 3000 }),
    floor: fc.constantFrom('stands' as const, 'wets' as const, 'neither' as const),
    back: fc.integer({ min: 1, max: 5 }),
  })

  const treadTable = [{ airC: 20, hours: 5 }]

  const build = (specs: readonly (typeof anyStep extends fc.Arbitrary<infer T> ? T : never)[]) =>
    specs.map((spec, index) =>
      step(`s${index}`, {
        inOneGo: spec.inOneGo,
        dust: spec.inOneGo ? spec.dust : spec.dust === 'minds' ? 'neither' : spec.dust,
        wet: [{ airC: 20, hours: 2 }],
        standsOn: spec.floor === 'stands' ? ['sole'] : [],
        ...(spec.floor === 'wets' && spec.inOneGo ? { tread: { floors: ['sole'], table: treadTable } } : {}),
        paces: [{ crew: spec.crew, personMinutes: Math.min(spec.minutes, spec.inOneGo ? 400 : 900) }],
        hoursKey: spec.inOneGo ? 'gloss' : undefined,
        needs: index >= spec.back ? [after(`s${index - spec.back}`, spec.wait)] : [],
      } as Partial<Step>),
    )

  it('never uses a person twice at once, works outside shifts, or starts before a wait is over', () => {
    const open = hours((hour) => (hour % 24 >= 7 && hour % 24 < 18 ? 'go' : 'no'))
    fc.assert(
      fc.property(fc.array(anyStep, { minLength: 1, maxLength: 25 }), (specs) => {
        const steps = build(specs)
        const { placed } = place(steps, { people: [ada, ben], hours: new Map([['gloss', open]]) })
        const at = new Map(placed.map((one) => [one.step, one]))
        const busy = placed.flatMap((one) =>
          one.pieces.flatMap((piece) => piece.people.map((id) => ({ id, ...piece }))),
        )
        for (const one of busy) {
          expect(
            ada.shifts.some(
              (shift) => shift.startMinute <= one.startMinute && one.endMinute <= shift.endMinute,
            ),
          ).toBe(true)
          const clash = busy.filter(
            (other) =>
              other.id === one.id && other.startMinute < one.endMinute && one.startMinute < other.endMinute,
          )
          expect(clash).toHaveLength(1)
        }
        for (const { id, needs } of steps) {
          for (const need of needs) {
            const [mine, theirs] = [at.get(id), at.get(need.step)]
            if (!mine || !theirs || need.wait.kind !== 'fixed') continue
            expect(mine.startMinute).toBeGreaterThanOrEqual(theirs.endMinute + need.wait.minutes)
          }
        }
      }),
      { numRuns: 200 },
    )
  })

  it('has nobody on a floor that cannot be trodden', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { minLength: 1, maxLength: 25 }), (specs) => {
        const steps = build(specs)
        const { placed } = place(steps, { people: [ada, ben] })
        const pieces = (of: (one: Step) => boolean) =>
          placed
            .filter(({ step: id }) => of(steps.find((one) => one.id === id)!))
            .flatMap((one) => one.pieces)
        for (const wet of pieces((one) => one.tread !== undefined)) {
          for (const feet of pieces((one) => one.standsOn.length > 0)) {
            const apart = feet.endMinute <= wet.startMinute || feet.startMinute >= wet.endMinute + 300
            expect(apart).toBe(true)
          }
        }
      }),
      { numRuns: 200 },
    )
  })

  it('gives the same calendar for the same input', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { minLength: 1, maxLength: 15 }), (specs) => {
        const once = JSON.stringify(place(build(specs)))
        expect(JSON.stringify(place(build(specs)))).toBe(once)
      }),
      { numRuns: 50 },
    )
  })
})
