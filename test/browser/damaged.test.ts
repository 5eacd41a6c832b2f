// A job whose shared documents hold every kind of damage, as a faulty program might leave it: it opens, says what is
// wrong where, plans the rest, and rewrites nothing.
import type { Page } from 'playwright-core'
import { afterEach, expect, it } from 'vitest'
import * as Y from 'yjs'
import { fillPart, moneyDocument, partOf, putShopJob, shopDocument, workDocument } from '#replica'
import { labelOf } from '#words'
import { besides, rooms } from '../../src/web/screens/rooms.ts'
import { openPage, until } from '../support/page.ts'
import { type App, describeInBrowser, drawn } from './support/app.ts'
import { onServer } from './support/boat.ts'

const atEnd: (() => Promise<unknown>)[] = []

afterEach(async () => {
  for (const end of atEnd.splice(0).reverse()) await end()
})

type Documents = { readonly work: Y.Doc; readonly money: Y.Doc }

/** A copy of a sample under a name of its own, damaged; the documents follow what happens to them on the server. */
async function put(
  app: App,
  { id, version, damage }: { readonly id: string; readonly version: string; readonly damage: Damage },
): Promise<Documents> {
  const page = openPage(Number(new URL(app.origin).port))
  atEnd.push(page.close)
  const sample = [workDocument('open-powerboat'), moneyDocument('open-powerboat')].map((name) =>
    page.share(name),
  )
  const made = [workDocument(id), moneyDocument(id)].map((name) => page.share(name))
  const shop = page.share(shopDocument)
  await until('open', () => [...sample, ...made, shop].every(({ kept }) => kept()))
  for (const [at, { doc }] of made.entries()) fillPart(doc, partOf(sample[at]!.doc), version)
  const [work, money] = [made[0]!.doc, made[1]!.doc]
  damage({ work, money })
  putShopJob(shop.doc, id, { name: huge, boatName: huge, madeMs: 0 })
  await until('kept', () => [...made, shop].every(({ kept }) => kept()))
  return { work, money }
}

type Damage = (docs: Documents) => void

const item = (doc: Y.Doc, section: string, id: string): Y.Map<unknown> =>
  doc.getMap<Y.Map<unknown>>(section).get(id)!

const huge = 'w'.repeat(200_000)

const everyKind: Damage = ({ work, money }) => {
  // A section that is not there.
  for (const key of [...work.getMap('marks').keys()]) work.getMap('marks').delete(key)
  // Other types than texts, and than maps of texts.
  work.getMap('boat').set('beam', 2.5)
  work.getMap('job').set('name', new Y.Map([['nested', 'map']]))
  work.getMap('zones').set('a-number', 7)
  work.getMap('zones').set('a-text', 'deck')
  work.getMap('findings').set('a-list', Y.Array.from(['soft']))
  item(work, 'sheets', [...work.getMap('sheets').keys()][0]!).set('solids', true)
  // What nobody knows.
  work.getMap('boat').set('colour of the moon', 'pale')
  work.getMap('nonsense').set('x', new Y.Map([['y', 'z']]))
  // Ids that lead nowhere, and to what was taken away.
  const [first, second] = [...work.getMap('layers').keys()] as [string, string]
  item(work, 'layers', first).set('sheet', 'no-such-sheet')
  item(work, 'zones', 'foredeck').set('gone', 'true')
  // Without a place, with one that is none, and what is no text at all.
  item(work, 'layers', second).delete('order')
  item(work, 'people', [...work.getMap('people').keys()][0]!).set('order', 12)
  work.getMap('zones').set('empty', new Y.Map())
  item(work, 'findings', 'soft-patch').set('hours', huge)
  work.getMap('job').set('boatName', huge)
  money.getMap('terms').set('margin', -1)
  money.getMap('prices').set('a-number', 3)
}

/** What is wrong, by the name of its box or its section. */
const told = [
  'Beam: A text belongs here',
  'Something in the boat is not known',
  'Name of the job: A text belongs here',
  'Give every item a name of its own. (the zones)',
  'Give every item a name of its own. (a list, the findings)',
  'Hours to put right: The text is 200',
  'Something in Nonsense is not known',
  'Margin: A text belongs here',
  'Give every item a name of its own. (the prices of packs)',
]

/** Goes through every room, and hears whatever the page throws. */
async function visitAll(page: Page, id: string): Promise<readonly string[]> {
  const thrown: string[] = []
  let here = ''
  page.on('pageerror', (error) => thrown.push(`${here}: ${error.message}`))
  await page.goto(`/job/${id}/boat`)
  await drawn(page)
  for (const room of [...rooms, ...besides]) {
    here = room.id
    await page.evaluate((path) => history.pushState(null, '', path), `/job/${id}/${room.id}`)
    await page.locator('main h1').first().waitFor()
    await drawn(page)
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    if (wide > 0) thrown.push(`${here}: ${wide} px wider than the window`)
  }
  return thrown
}

const stateOf = ({ work, money }: Documents): readonly string[] =>
  [work, money].map((doc) => Buffer.from(Y.encodeStateAsUpdate(doc)).toString('base64'))

describeInBrowser('a damaged job', (app) => {
  it('opens in every room, says what is wrong where, plans the rest, and is left as it is', async () => {
    const docs = await put(app(), { id: 'damaged', version: '1', damage: everyKind })
    const before = stateOf(docs)
    const device = await app().device()
    atEnd.push(() => device.close())
    const page = await device.newPage()
    expect(await visitAll(page, 'damaged')).toEqual([])

    await page.goto('/')
    await page.getByRole('link', { name: 'www' }).first().waitFor()
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0)
    await page.goto('/job/damaged/open')
    await drawn(page)
    const text = (await page.locator('main').textContent()) ?? ''
    for (const sentence of told) expect(text).toContain(sentence)
    expect(text).not.toContain('w'.repeat(1000))
    expect(text).toContain(`${'w'.repeat(60)}…`)

    await page.goto('/job/damaged/days')
    await drawn(page)
    expect(await page.locator('.story-stick-count', { hasText: 'days' }).count()).toBeGreaterThan(0)
    await onServer(page)
    expect(stateOf(docs)).toEqual(before)
  })

  it('of a newer version opens to be read, and is left as it is', async () => {
    const damage: Damage = ({ work }) => void work.getMap('boat').set('sails', 'many')
    const docs = await put(app(), { id: 'newer', version: '99', damage })
    const before = stateOf(docs)
    const device = await app().device()
    atEnd.push(() => device.close())
    const page = await device.newPage()
    await page.goto('/job/newer/boat')
    await drawn(page)
    await page.locator('.banner', { hasText: 'newer version' }).waitFor()
    expect(await page.getByLabel(labelOf('cell.boat.beam'), { exact: true }).first().isEditable()).toBe(false)
    await onServer(page)
    expect(stateOf(docs)).toEqual(before)
  })
})
