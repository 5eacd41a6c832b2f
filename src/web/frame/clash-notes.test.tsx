import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import type { RawPart } from '#job'
import { createWords } from '#words'
import type { Clash } from '../device/clash-box.ts'
import type { JobEdits, JobView } from '../job/job-view.ts'
import { settleClash } from '../job/settle-clash.ts'
import { ClashNotes } from './clash-notes.tsx'

const words = createWords({ locale: 'en-GB', system: 'metric' })

const draft: Clash = { part: 'work', section: 'boat', key: 'draft', mine: '0.70 m', theirs: '0.75 m' }
const area: Clash = {
  part: 'work',
  section: 'zones',
  item: 'deck',
  key: 'area',
  mine: '3.2 m²',
  theirs: '3.4 m²',
}
const weather = (key: string, mine: string, theirs: string): Clash => ({
  part: 'work',
  section: 'weather',
  key,
  mine,
  theirs,
})
const weathers = [weather('file', 'mine.csv', 'other.csv'), weather('hash', 'a1', 'b2')]

const notes = (clashes: readonly Clash[], work: RawPart, readOnly = false): string => {
  const view = { raw: { hardstand: '1', work }, clashes, settleClash: () => {}, readOnly, words }
  return renderToStaticMarkup(<ClashNotes view={view as unknown as JobView} />)
}

const sentences = (...given: Parameters<typeof notes>): readonly string[] =>
  [...notes(...given).matchAll(/<p class="banner-text">(.*?)<\/p>/g)].map(([, text = '']) => text)

describe('what two devices wrote at once', () => {
  it('is said with both values and the one that stands', () => {
    const work = { boat: { draft: '0.75 m' }, zones: { deck: { name: 'Foredeck', area: '3.4 m²' } } }
    expect(sentences([draft, area], work).slice(0, 2)).toEqual([
      'Depth of the hull: you wrote 0.70 m, another device 0.75 m; 0.75 m stands.',
      'Foredeck, area: you wrote 3.2 m², another device 3.4 m²; 3.4 m² stands.',
    ])
  })

  it('is said as it is now', () => {
    const said = (boat: Readonly<Record<string, string>>) => sentences([draft], { boat })
    expect(said({ draft: '0.8 m' })).toEqual([
      'Depth of the hull: you wrote 0.70 m, another device 0.75 m; 0.8 m stands.',
    ])
    expect(said({})).toEqual([
      'Depth of the hull: you wrote 0.70 m, another device 0.75 m; the box is empty now.',
    ])
    expect(said({ draft: '0.70 m' })).toEqual([])
  })

  it('has two ways out, and one where nothing can be changed', () => {
    const buttons = (readOnly: boolean) =>
      notes([draft], { boat: { draft: '0.75 m' } }, readOnly).match(/Use mine|Leave it/g)
    expect(buttons(false)).toEqual(['Use mine', 'Leave it'])
    expect(buttons(true)).toEqual(['Leave it'])
  })

  it('leaves the sheet in sight however much it is', () => {
    const many = Array.from({ length: 9 }, (_, at): Clash => ({ ...draft, key: `cell${at}` }))
    const shown = sentences(many, { boat: {} })
    expect(shown.slice(3)).toEqual([
      '6 more cells were written on two devices; settle what stands above first.',
      // On a phone, where one is shown.
      '8 more cells were written on two devices; settle what stands above first.',
    ])
    expect(notes([], {})).toBe('')
  })

  it('tells a weather by its file alone', () => {
    expect(sentences(weathers, { weather: { file: 'other.csv', hash: 'b2' } })).toEqual([
      'Weather file: you wrote mine.csv, another device other.csv; other.csv stands.',
    ])
  })
})

it('a typical year and a forecast are told each by itself', () => {
  const typical = weathers.map(
    (clash): Clash => ({
      ...clash,
      key: clash.key === 'hash' ? 'typicalHash' : 'typicalFile',
    }),
  )
  const shown = sentences([...weathers, ...typical], {
    weather: { file: 'other.csv', hash: 'b2', typicalFile: 'other.csv', typicalHash: 'b2' },
  })
  // The third is for a phone, where one is shown.
  expect(shown).toHaveLength(3)
  expect(shown[1]).toMatch(/^File of the typical year: /)
})

describe('settling', () => {
  const settled = (clash: Clash, whose: 'mine' | 'theirs') => {
    let left: readonly Clash[] = [draft, area, ...weathers]
    const set: string[] = []
    const edits: Pick<JobEdits, 'together'> = {
      together: (work) =>
        work({
          set: ({ key }: Pick<Clash, 'key'>, text: string) => set.push(`${key} ${text}`),
        } as unknown as JobEdits),
    }
    const clashes = {
      list: () => left,
      leave: ({ key }: Pick<Clash, 'key'>) => {
        left = left.filter((one) => one.key !== key)
      },
    }
    settleClash({ clashes, edits }, clash, whose)
    return { set, left: left.map(({ key }) => key) }
  }

  it('writes what this device wrote, or nothing', () => {
    expect(settled(draft, 'mine')).toEqual({ set: ['draft 0.70 m'], left: ['area', 'file', 'hash'] })
    expect(settled(draft, 'theirs')).toEqual({ set: [], left: ['area', 'file', 'hash'] })
  })

  it('takes a weather whole', () => {
    expect(settled(weathers[0]!, 'mine')).toEqual({
      set: ['file mine.csv', 'hash a1'],
      left: ['draft', 'area'],
    })
  })
})
