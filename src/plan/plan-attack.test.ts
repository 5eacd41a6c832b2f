/** Documents with every kind of damage, as two phones and a tired hand leave them: the plan goes on and says so. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { RawDocument } from '#job'
import { plan } from '#plan'
import {
  planInput,
  projectRaw,
  type SampleName,
  sampleRaw,
  sampleWeather,
} from '../../test/support/samples.ts'

type Node = Record<string, unknown>

/** Paths of every cell, item and section of a document. */
function paths(node: unknown, at: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof node !== 'object' || node === null) return [at]
  return [
    ...(at.length > 0 ? [at] : []),
    ...Object.entries(node as Node).flatMap(([key, value]) => paths(value, [...at, key])),
  ]
}

function change(node: unknown, path: readonly string[], to: unknown): unknown {
  const [key, ...rest] = path
  if (key === undefined) return to
  const map = { ...(typeof node === 'object' && node !== null ? (node as Node) : {}) }
  const value = rest.length === 0 ? to : change(map[key], rest, to)
  if (value === undefined) delete map[key]
  else map[key] = value
  return map
}

const damage = fc.constantFrom<unknown>(
  undefined,
  '',
  '0 m',
  '-3 h',
  '1e300 m²',
  '99',
  'NaN',
  '0:1',
  'port',
  'topsides-port, nowhere',
  '1000 %',
  '20C: 0h',
  '2027-02-30',
  'Mon-Sun',
  '00:00',
  { a: { b: 'c' } },
  ['x'],
)

const anySample = fc.constantFrom<SampleName>('open-powerboat', 'deck-only', 'cruiser-topsides')

describe('a damaged document', () => {
  const weather = {
    'open-powerboat': sampleWeather('open-powerboat'),
    'deck-only': sampleWeather('deck-only'),
    'cruiser-topsides': sampleWeather('cruiser-topsides'),
  }

  it('is planned without an exception, and every number of the plan is a number', () => {
    fc.assert(
      fc.property(
        anySample,
        fc.array(fc.tuple(fc.nat(), damage), { minLength: 1, maxLength: 8 }),
        (name, hits) => {
          let raw: unknown = sampleRaw(name)
          for (const [index, to] of hits) {
            const all = paths((raw as RawDocument).work)
            const path = all[index % all.length]
            if (path) raw = change(raw, ['work', ...path], to)
          }
          const projected = projectRaw(raw as RawDocument)
          if (!projected.complete) return
          const made = plan(planInput(projected, weather[name]))
          for (const layer of made.quantities.layers) expect(Number.isFinite(layer.mixedM3)).toBe(true)
          for (const one of made.days.placed) expect(Number.isSafeInteger(one.endMinute)).toBe(true)
          if (made.money) expect(Number.isSafeInteger(made.money.totalCoins)).toBe(true)
        },
      ),
      { numRuns: 80 },
    )
  }, 120_000)

  it('with nothing but its required cells is a plan with nothing in it', () => {
    const bare: RawDocument = {
      hardstand: '1',
      work: {
        job: { name: 'Bare', start: '2027-05-01' },
        boat: { kind: 'dinghy' },
        place: { shelter: 'open', timeZone: 'Europe/Paris' },
      },
    } as RawDocument
    const made = plan(planInput(projectRaw(bare), undefined))
    expect(made.buildUps.layers).toEqual([])
    expect(made.notes.map((note) => note.code)).toEqual(
      expect.arrayContaining(['surfaces.noHull', 'calendar.nobodyWorks']),
    )
  })

  it('with three hundred zones and every layer on each of them is planned or said to be too long for the calendar', () => {
    const raw = sampleRaw('deck-only') as unknown as { work: Record<string, Node> }
    const zones = Object.fromEntries(
      Array.from({ length: 300 }, (_, index) => [
        `z${index}`,
        { kind: 'hatch', length: '1 m', width: '1 m', name: `Hatch ${index}` },
      ]),
    )
    const layers = Object.fromEntries(
      Object.entries(raw.work.layers ?? {}).map(([id, layer]) => [
        id,
        { ...(layer as Node), zones: Object.keys(zones).join(', ') },
      ]),
    )
    const many = { ...raw, work: { ...raw.work, zones, layers, findings: {}, fittings: {}, marks: {} } }
    const made = plan(planInput(projectRaw(many as unknown as RawDocument), weather['deck-only']))
    expect(made.days.placed.length + made.days.unplaced.length).toBeGreaterThan(1000)
    expect(made.days.unplaced.every((one) => ['horizon', 'needs'].includes(one.reason))).toBe(true)
  }, 60_000)
})
