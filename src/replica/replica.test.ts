import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { parseJob, project } from '#job'
import { sampleBytes } from '../../test/job-documents.ts'
import {
  addItem,
  createUndo,
  fillPart,
  moveItem,
  partOf,
  putShopJob,
  setCell,
  setGone,
  setShopJobGone,
  shopJobs,
  versionOf,
} from './index.ts'

const raw = parseJob(sampleBytes('open-powerboat')).document!

const workDoc = (): Y.Doc => {
  const doc = new Y.Doc()
  fillPart(doc, raw.work, '1')
  return doc
}

const copyOf = (doc: Y.Doc): Y.Doc => {
  const copy = new Y.Doc()
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(doc))
  return copy
}

const meet = (a: Y.Doc, b: Y.Doc): void => {
  Y.applyUpdate(a, Y.encodeStateAsUpdate(b, Y.encodeStateVector(a)))
  Y.applyUpdate(b, Y.encodeStateAsUpdate(a, Y.encodeStateVector(b)))
}

const zoneIds = (doc: Y.Doc): readonly string[] =>
  project({ hardstand: '1', work: partOf(doc) }, { strict: false }).work.zones.map(({ id }) => id)

describe('a part of a job in a shared document', () => {
  it('comes out as it went in, every cell as the person wrote it', () => {
    const doc = copyOf(workDoc())
    expect(partOf(doc)).toEqual(raw.work)
    expect(versionOf(doc)).toBe('1')
  })

  it('is read whatever kind of value a faulty writer left', () => {
    const doc = new Y.Doc()
    doc.getArray('zones').push(['a'])
    doc.getText('boat').insert(0, 'beam')
    doc.getMap('people').set('lead', 7)
    doc.getMap('job').set('name', new Y.Array())
    const part = partOf(doc)
    const { problems } = project({ hardstand: '1', work: part }, { strict: false })
    expect(problems.map(({ pointer }) => pointer)).toEqual(
      expect.arrayContaining(['/work/boat', '/work/people/lead', '/work/zones']),
    )
  })

  it('that came over the wire holds arrays as maps without entries, and says nothing else', () => {
    const doc = new Y.Doc()
    doc.getArray('zones').push(['a'])
    expect(partOf(copyOf(doc))).toEqual({ zones: {} })
  })
})

describe('edits', () => {
  it('set and clear a cell, and leave an unknown item alone', () => {
    const doc = workDoc()
    setCell(doc, { section: 'boat', key: 'beam' }, '2.6 m')
    setCell(doc, { section: 'boat', key: 'draft' }, undefined)
    setCell(doc, { section: 'zones', item: 'nowhere', key: 'name' }, 'x')
    const { boat, zones } = partOf(doc)
    expect(boat).toMatchObject({ beam: '2.6 m' })
    expect(boat).not.toHaveProperty('draft')
    expect(zones).not.toHaveProperty('nowhere')
  })

  it('that change nothing send nothing', () => {
    const doc = workDoc()
    let sent = 0
    doc.on('update', () => sent++)
    setCell(doc, { section: 'boat', key: 'kind' }, 'open powerboat')
    setCell(doc, { section: 'boat', key: 'nothing' }, undefined)
    expect(sent).toBe(0)
  })

  it('add an item last, or behind another, and move it to the front', () => {
    const doc = workDoc()
    const before = zoneIds(doc)
    addItem(
      doc,
      { section: 'zones', item: 'hatch' },
      { cells: { name: 'Hatch', kind: 'hatch' }, after: undefined },
    )
    expect(zoneIds(doc)).toEqual([...before, 'hatch'])
    addItem(
      doc,
      { section: 'zones', item: 'lid' },
      { cells: { name: 'Lid', kind: 'hatch' }, after: before[0]! },
    )
    expect(zoneIds(doc).slice(0, 3)).toEqual([before[0], 'lid', before[1]])
    moveItem(doc, { section: 'zones', item: 'hatch' }, undefined)
    expect(zoneIds(doc)[0]).toBe('hatch')
    moveItem(doc, { section: 'zones', item: 'hatch' }, 'lid')
    expect(zoneIds(doc).slice(0, 3)).toEqual([before[0], 'lid', 'hatch'])
  })

  it('take an item away and bring it back with all its cells', () => {
    const doc = workDoc()
    const place = { section: 'zones', item: 'foredeck' }
    setGone(doc, place, true)
    expect(zoneIds(doc)).not.toContain('foredeck')
    setGone(doc, place, false)
    expect(partOf(doc)).toEqual(raw.work)
  })

  it('of one thing on two devices without a signal are both kept', () => {
    const phone = workDoc()
    const laptop = copyOf(phone)
    setCell(phone, { section: 'zones', item: 'foredeck', key: 'area' }, '3.2 m²')
    addItem(
      phone,
      { section: 'zones', item: 'p1' },
      { cells: { name: 'P', kind: 'hatch' }, after: undefined },
    )
    setCell(laptop, { section: 'zones', item: 'foredeck', key: 'name' }, 'Bow deck')
    addItem(
      laptop,
      { section: 'zones', item: 'l1' },
      { cells: { name: 'L', kind: 'hatch' }, after: undefined },
    )
    meet(phone, laptop)
    expect(partOf(phone)).toEqual(partOf(laptop))
    expect(partOf(phone).zones?.foredeck).toMatchObject({ area: '3.2 m²', name: 'Bow deck' })
    expect(zoneIds(phone)).toEqual(zoneIds(laptop))
    expect(zoneIds(phone)).toEqual(expect.arrayContaining(['p1', 'l1']))
  })
})

describe('undo', () => {
  const desk = () => {
    const [work, money] = [workDoc(), new Y.Doc()]
    fillPart(money, raw.money!)
    const origin = {}
    const undo = createUndo([work, money], { origin, joinMs: 0, changed: () => {} })
    const beam = (text: string) =>
      work.transact(() => setCell(work, { section: 'boat', key: 'beam' }, text), origin)
    const margin = (text: string) =>
      money.transact(() => setCell(money, { section: 'terms', key: 'margin' }, text), origin)
    const state = () => [partOf(work).boat?.beam, partOf(money).terms?.margin]
    return { work, undo, beam, margin, state }
  }

  it('goes back through both documents in the order of the edits, and forth again', () => {
    const { undo, beam, margin, state } = desk()
    const first = state()
    beam('2.6 m')
    margin('5 %')
    beam('2.7 m')
    const steps = [state()]
    for (let k = 0; k < 3; k++) {
      undo.undo()
      steps.push(state())
    }
    expect(steps).toEqual([['2.7 m', '5 %'], ['2.6 m', '5 %'], ['2.6 m', first[1]], first])
    for (let k = 0; k < 3; k++) undo.redo()
    expect(state()).toEqual(['2.7 m', '5 %'])
    expect(undo.canRedo()).toBe(false)
  })

  it('leaves the edits of others alone', () => {
    const { work, undo, beam, state } = desk()
    beam('2.6 m')
    const other = copyOf(work)
    setCell(other, { section: 'boat', key: 'draft' }, '0.5 m')
    meet(work, other)
    undo.undo()
    expect(partOf(work).boat?.draft).toBe('0.5 m')
    expect(state()[0]).toBe(raw.work.boat?.beam)
    expect(undo.canUndo()).toBe(false)
  })

  it('forgets what could be done again once something new is done', () => {
    const { undo, beam, margin } = desk()
    beam('2.6 m')
    undo.undo()
    margin('5 %')
    expect(undo.canRedo()).toBe(false)
    expect(undo.canUndo()).toBe(true)
  })
})

describe('the list of jobs', () => {
  it('holds jobs of two devices, the newest first, without those taken off', () => {
    const [phone, laptop] = [new Y.Doc(), new Y.Doc()]
    putShopJob(phone, 'a', { name: 'A', boatName: 'Wren', madeMs: 10 })
    putShopJob(laptop, 'b', { name: 'B', madeMs: 20 })
    meet(phone, laptop)
    expect(shopJobs(phone)).toEqual([
      { id: 'b', name: 'B', boatName: '', madeMs: 20 },
      { id: 'a', name: 'A', boatName: 'Wren', madeMs: 10 },
    ])
    setShopJobGone(laptop, 'b', true)
    putShopJob(phone, 'a', { name: 'A2' })
    meet(phone, laptop)
    expect(shopJobs(laptop).map(({ name }) => name)).toEqual(['A2'])
    setShopJobGone(laptop, 'b', false)
    expect(shopJobs(laptop)).toHaveLength(2)
  })
})
