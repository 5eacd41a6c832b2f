import { describe, expect, it } from 'vitest'
import type { SheetFile } from '#intake'
import type { JobEdits } from './job-view.ts'
import { sheetsOf, takeSheets } from './take-sheets.ts'

const file: SheetFile = {
  sheets: { gloss: { name: 'Gloss' }, primer: { name: 'Primer' } },
  windows: { wet: { sheet: 'gloss', until: '4 h' }, lost: { sheet: 'nobody', from: '1 h' } },
  thinners: { slow: { sheet: 'primer', most: '10 %' } },
}

function edits() {
  const added: [section: string, cells: Readonly<Record<string, string>>][] = []
  let steps = 0
  const own: JobEdits = {
    set: () => undefined,
    add: ({ section }, cells) => {
      added.push([section, cells])
      return `new-${added.length}`
    },
    remove: () => undefined,
    move: () => undefined,
    together: (work) => {
      steps++
      work(own)
    },
  }
  return { own, added, steps: () => steps }
}

describe('sheets of a file', () => {
  it('go into the job in one step, with what belongs to them under their new ids', () => {
    const { own, added, steps } = edits()
    takeSheets({ edits: own }, file)
    expect(steps()).toBe(1)
    expect(added).toEqual([
      ['sheets', { name: 'Gloss' }],
      ['sheets', { name: 'Primer' }],
      ['windows', { sheet: 'new-1', until: '4 h' }],
      ['thinners', { sheet: 'new-2', most: '10 %' }],
    ])
  })

  it('are those of the job, without their order and what was taken away', () => {
    const raw = {
      hardstand: '1',
      work: { ...file, sheets: { gloss: { name: 'Gloss', order: 'a' }, old: { name: 'Old', gone: 'true' } } },
    }
    expect(sheetsOf({ raw })).toEqual({ ...file, sheets: { gloss: { name: 'Gloss' } } })
  })
})
