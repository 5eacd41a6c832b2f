import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { fillPart, type Overwritten, overwrittenIn, setCell, setGone } from './index.ts'

type Text = readonly [device: Device, text: string]
type Device = {
  readonly doc: Y.Doc
  /** What this device was told that it lost. */
  readonly told: Overwritten[]
}

/** Of two that write at once, the one with the larger number stands. */
function deviceOf(clientID: number, from?: Y.Doc): Device {
  const doc = new Y.Doc()
  doc.clientID = clientID
  if (from) Y.applyUpdate(doc, Y.encodeStateAsUpdate(from))
  const told: Overwritten[] = []
  doc.on('afterTransaction', (transaction) => {
    if (!transaction.local) told.push(...overwrittenIn(transaction, new Set([clientID])))
  })
  return { doc, told }
}

const draft = { section: 'boat', key: 'draft' }
const area = { section: 'zones', item: 'deck', key: 'area' }

function pair(): readonly [Device, Device] {
  const first = new Y.Doc()
  fillPart(first, { boat: { draft: '0.6 m' }, zones: { deck: { name: 'Deck', area: '3 m²' } } })
  return [deviceOf(10, first), deviceOf(20, first)]
}

function meet({ doc: a }: Device, { doc: b }: Device): void {
  const [forB, forA] = [Y.encodeStateAsUpdate(a), Y.encodeStateAsUpdate(b)]
  Y.applyUpdate(a, forA)
  Y.applyUpdate(b, forB)
}

const write = ([{ doc }, text]: Text, cell = draft): void => setCell(doc, cell, text)

describe('a cell that two devices wrote while apart', () => {
  it('is told to the one whose value gave way, and to nobody else', () => {
    const [shed, office] = pair()
    write([shed, '0.70 m'])
    write([office, '0.75 m'])
    write([shed, '3.2 m²'], area)
    write([office, '3.4 m²'], area)
    meet(shed, office)
    expect(shed.doc.getMap('boat').get('draft')).toBe('0.75 m')
    expect(shed.told).toEqual([
      { ...draft, mine: '0.70 m', theirs: '0.75 m' },
      { ...area, mine: '3.2 m²', theirs: '3.4 m²' },
    ])
    expect(office.told).toEqual([])
  })

  it('is told by the last value of each, once, however often they meet', () => {
    const [shed, office] = pair()
    write([shed, '0.70 m'])
    write([shed, '0.71 m'])
    write([office, '0.75 m'])
    write([office, '0.76 m'])
    meet(shed, office)
    meet(shed, office)
    expect(shed.told).toEqual([{ ...draft, mine: '0.71 m', theirs: '0.76 m' }])
    expect(office.told).toEqual([])
  })

  it('is told to a device that had its value on the server long before', () => {
    const [shed, office] = pair()
    const server = deviceOf(5, shed.doc)
    write([shed, '0.70 m'])
    meet(shed, server)
    write([office, '0.75 m'])
    meet(office, server)
    meet(server, shed)
    expect(shed.told).toEqual([{ ...draft, mine: '0.70 m', theirs: '0.75 m' }])
  })
})

describe('nobody is told', () => {
  it.each([
    [
      'of a value that was written over knowingly',
      ([shed, office]: readonly [Device, Device]) => {
        write([shed, '0.70 m'])
        meet(shed, office)
        write([office, '0.72 m'])
        write([office, '0.75 m'])
      },
    ],
    [
      'where both wrote the same',
      ([shed, office]: readonly [Device, Device]) => {
        write([shed, '0.75 m'])
        write([office, '0.75 m'])
      },
    ],
    [
      'of other cells',
      ([shed, office]: readonly [Device, Device]) => {
        write([shed, '0.70 m'])
        write([office, '3.4 m²'], area)
      },
    ],
    [
      'of where an item stands, or that it was taken away',
      ([shed, office]: readonly [Device, Device]) => {
        write([shed, 'a'], { ...area, key: 'order' })
        write([office, 'b'], { ...area, key: 'order' })
        setGone(shed.doc, area, true)
        setGone(office.doc, area, true)
      },
    ],
    [
      'of what a faulty writer left',
      ([shed, office]: readonly [Device, Device]) => {
        write([shed, '0.70 m'])
        office.doc.getMap('boat').set('draft', new Y.Map())
        shed.doc.getMap('boat').set('beam', 7)
        office.doc.getArray('points').push(['a'])
        shed.doc.getMap('points').set('a', '1 m')
      },
    ],
  ])('%s', (_, work) => {
    const devices = pair()
    work(devices)
    meet(...devices)
    expect(devices.map(({ told }) => told)).toEqual([[], []])
  })
})
