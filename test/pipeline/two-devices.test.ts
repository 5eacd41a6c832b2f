// Two devices edit the same items without a signal and meet: in any order the same state, nothing lost, nothing doubled.
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { afterEach, describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { addItem, moveItem, partOf, setCell, setGone } from '#replica'
import { openPage, until } from '../support/page.ts'
import { startTestServer } from '../support/test-server.ts'

const seeds = Array.from({ length: 200 }, (_, at) => at + 1)
const section = 'zones'
const shared = ['sole', 'deck', 'hull', 'hatch', 'coaming']

type Device = {
  readonly name: string
  readonly doc: Y.Doc
  readonly updates: Uint8Array[]
  /** Items that it made, and cells that nobody else writes, as they must be in the end. */
  readonly made: string[]
  readonly own: Map<string, string>
}

type Draw = (most: number) => number

function draws(seed: number): Draw {
  const random = xoroshiro128plus(seed)
  return (most) => uniformInt(random, 0, most)
}

function device(name: string, start: Uint8Array): Device {
  const doc = new Y.Doc()
  Y.applyUpdate(doc, start)
  const updates: Uint8Array[] = []
  doc.on('update', (update: Uint8Array) => void updates.push(update))
  return { name, doc, updates, made: [], own: new Map() }
}

function startState(): Uint8Array {
  const doc = new Y.Doc()
  for (const item of shared) addItem(doc, { section, item }, { cells: { name: item }, after: undefined })
  return Y.encodeStateAsUpdate(doc)
}

/** One edit, often of an item that the other device edits too. */
function edit({ name, doc, made, own }: Device, draw: Draw): void {
  const all = [...shared, ...made]
  const item = all[draw(all.length - 1)]!
  const text = `${name} ${draw(1_000_000)}`
  const kind = draw(5)
  if (kind === 0) setCell(doc, { section, item, key: 'name' }, text)
  else if (kind === 1) {
    own.set(item, text)
    setCell(doc, { section, item, key: `by-${name}` }, text)
  } else if (kind === 2) setGone(doc, { section, item }, draw(1) === 0)
  else if (kind === 3)
    moveItem(doc, { section, item }, draw(4) === 0 ? undefined : all[draw(all.length - 1)]!)
  else {
    const id = `${name}-${made.length}`
    made.push(id)
    addItem(doc, { section, item: id }, { cells: { name: text }, after: item })
  }
}

function shuffled<Item>(items: readonly Item[], draw: Draw): readonly Item[] {
  const mixed = [...items]
  for (let at = mixed.length - 1; at > 0; at -= 1) {
    const other = draw(at)
    ;[mixed[at], mixed[other]] = [mixed[other]!, mixed[at]!]
  }
  return mixed
}

function items(doc: Y.Doc): ReadonlyMap<string, Readonly<Record<string, string>>> {
  return new Map(Object.entries(partOf(doc)[section] ?? {})) as ReadonlyMap<string, Record<string, string>>
}

/** Every item is there once, a removed one too, with its place, and each device finds what only it wrote. */
function expectWhole(doc: Y.Doc, devices: readonly Device[]): void {
  const found = items(doc)
  expect([...found.keys()].sort()).toEqual([...shared, ...devices.flatMap(({ made }) => made)].sort())
  for (const cells of found.values()) expect(cells.order).toMatch(/./)
  for (const { name, own } of devices)
    for (const [item, text] of own) expect(found.get(item)?.[`by-${name}`]).toBe(text)
}

describe('two devices without a signal', { timeout: 180_000 }, () => {
  it('end in the same state in whatever order their edits arrive', () => {
    for (const seed of seeds) meet(seed)
  })
})

function meet(seed: number): void {
  const draw = draws(seed)
  const start = startState()
  const devices = [device('ada', start), device('ben', start)]
  for (let edits = 0; edits < 30; edits += 1) for (const each of devices) edit(each, draw)
  const all = devices.flatMap(({ updates }) => [...updates])
  // Some arrive twice, as they do after a broken line.
  const sent = [...all, ...all.filter(() => draw(3) === 0)]
  const third = device('cid', start)
  for (const { doc } of [...devices, third])
    for (const update of shuffled(sent, draw)) Y.applyUpdate(doc, update)
  for (const { doc } of [...devices, third]) {
    expect(partOf(doc), `seed ${seed}`).toEqual(partOf(devices[0]!.doc))
    expectWhole(doc, devices)
  }
}

const atEnd: (() => Promise<void>)[] = []

afterEach(async () => {
  for (const end of atEnd.splice(0).reverse()) await end()
})

describe('two devices that meet through the server', () => {
  it('end in the same state, and so does one that comes later', async () => {
    const { server, port } = await startTestServer()
    atEnd.push(server.close)
    const draw = draws(7)
    const start = startState()
    const devices = [device('ada', start), device('ben', start)]
    for (let edits = 0; edits < 60; edits += 1) for (const each of devices) edit(each, draw)
    const pages = devices.map(({ doc }) => {
      const page = openPage(port)
      atEnd.push(page.close)
      return page.share('work:teal', doc)
    })
    // They go on while they meet.
    for (let edits = 0; edits < 60; edits += 1) {
      for (const each of devices) edit(each, draw)
      await new Promise((resolve) => setTimeout(resolve, 2))
    }
    const alike = (): boolean =>
      JSON.stringify(sortedItems(devices[0]!.doc)) === JSON.stringify(sortedItems(devices[1]!.doc))
    await until('both alike', () => pages.every((page) => page.kept()) && alike())
    const late = openPage(port)
    atEnd.push(late.close)
    const third = late.share('work:teal')
    await until('the third', () => third.kept())
    expect(partOf(third.doc)).toEqual(partOf(devices[0]!.doc))
    expectWhole(third.doc, devices)
  })
})

const sortedItems = (doc: Y.Doc): unknown =>
  [...items(doc)].sort().map(([id, cells]) => [id, Object.entries(cells).sort()])
