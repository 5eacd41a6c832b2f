import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { fillPart, setCell } from '#replica'
import { type Clash, type ClashShelf, openClashBox } from './clash-box.ts'

const memoryShelf = (): ClashShelf => {
  const kept = new Map<string, string>()
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) }
}

const draft = { section: 'boat', key: 'draft' }
const beam = { section: 'boat', key: 'beam' }

/** A page on a device: the document as it is kept there, and the shelf of that device. */
const pageOf = (clientID: number, shelf: ClashShelf | undefined, kept?: Y.Doc) => {
  const doc = new Y.Doc()
  doc.clientID = clientID
  if (kept) Y.applyUpdate(doc, Y.encodeStateAsUpdate(kept))
  const box = openClashBox(shelf, 'teal')
  box.watch('work', doc)
  return { doc, box }
}

type Page = ReturnType<typeof pageOf>

const first = (): Y.Doc => {
  const doc = new Y.Doc()
  fillPart(doc, { boat: { draft: '0.6 m', beam: '2.5 m' } })
  return doc
}

const meet = ({ doc: a }: Pick<Page, 'doc'>, { doc: b }: Pick<Page, 'doc'>): void => {
  const [forB, forA] = [Y.encodeStateAsUpdate(a), Y.encodeStateAsUpdate(b)]
  Y.applyUpdate(a, forA)
  Y.applyUpdate(b, forB)
}

/** A shed whose draft and beam have given way to those of the office. */
const apart = (shelf: ClashShelf | undefined) => {
  const kept = first()
  const [shed, office] = [pageOf(10, shelf, kept), pageOf(20, memoryShelf(), kept)]
  for (const [cell, mine, theirs] of [
    [draft, '0.70 m', '0.75 m'],
    [beam, '2.6 m', '2.7 m'],
  ] as const) {
    setCell(shed.doc, cell, mine)
    setCell(office.doc, cell, theirs)
  }
  return { shed, office }
}

const lostDraft: Clash = { part: 'work', ...draft, mine: '0.70 m', theirs: '0.75 m' }
const lostBeam: Clash = { part: 'work', ...beam, mine: '2.6 m', theirs: '2.7 m' }

describe('values of this device that gave way', () => {
  it('are listed, through a reload too, until each is settled', () => {
    const shelf = memoryShelf()
    const { shed, office } = apart(shelf)
    meet(shed, office)
    expect(shed.box.list()).toEqual([lostBeam, lostDraft])
    expect(office.box.list()).toEqual([])

    const again = pageOf(11, shelf, shed.doc)
    expect(again.box.list()).toEqual([lostBeam, lostDraft])
    again.box.leave(lostBeam)
    expect(again.box.list()).toEqual([lostDraft])
    expect(pageOf(12, shelf, shed.doc).box.list()).toEqual([lostDraft])
  })

  it('are known where they were written in an earlier page and sent by a later one', () => {
    const shelf = memoryShelf()
    const { shed, office } = apart(shelf)
    shed.box.close()
    const later = pageOf(11, shelf, shed.doc)
    meet(later, office)
    expect(later.box.list()).toEqual([lostBeam, lostDraft])
  })

  it('are settled by writing the cell anew, on this device alone', () => {
    const { shed, office } = apart(memoryShelf())
    meet(shed, office)
    setCell(shed.doc, { section: 'boat', key: 'kind' }, 'sloop')
    setCell(office.doc, draft, '0.76 m')
    meet(shed, office)
    expect(shed.box.list()).toHaveLength(2)
    setCell(shed.doc, draft, '0.70 m')
    expect(shed.box.list()).toEqual([lostBeam])
    meet(shed, office)
    expect(office.box.list()).toEqual([])
    expect(office.doc.getMap('boat').get('draft')).toBe('0.70 m')
  })

  it('are listed for as long as the page is open where the browser keeps nothing', () => {
    const full: ClashShelf = {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('no room', 'QuotaExceededError')
      },
    }
    for (const shelf of [undefined, full]) {
      const { shed, office } = apart(shelf)
      meet(shed, office)
      expect(shed.box.list()).toEqual([lostBeam, lostDraft])
      shed.box.leave(lostBeam)
      expect(shed.box.list()).toEqual([lostDraft])
    }
  })

  it('are read whatever lies on the shelf', () => {
    const rows = [lostDraft, { ...lostDraft, mine: 7 }, { ...lostDraft, item: 7 }, 'x', null, { part: 'log' }]
    for (const [text, list] of [
      [JSON.stringify(rows), [lostDraft]],
      ['{"a":1}', []],
      ['[{', []],
    ] as const) {
      const shelf = memoryShelf()
      shelf.setItem('hardstand.clashes.teal', text)
      expect(openClashBox(shelf, 'teal').list()).toEqual(list)
    }
  })
})
