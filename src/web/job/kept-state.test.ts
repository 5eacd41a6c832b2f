import { describe, expect, it, vi } from 'vitest'
import type { Connection } from '../device/connection.ts'
import type { DeviceDocument } from '../device/device-document.ts'
import type { Sync } from '../device/document-sync.ts'
import { type KeptFacts, keptState } from './kept-state.ts'

vi.stubGlobal('__APP_VERSION__', '9.9.9')

const document = (given: Partial<Record<'kept' | 'fault', unknown>> = {}) =>
  ({ kept: () => true, fault: () => undefined, ...given }) as unknown as DeviceDocument
const sync = (given: Partial<Sync> = {}) =>
  ({ waiting: () => 0, notTaken: () => undefined, ...given }) as unknown as Sync
const connection = (online: boolean) =>
  ({ online: () => online, hello: () => undefined, mustSignIn: () => false }) as unknown as Connection

/** Everything kept everywhere, but for what is given. */
const facts = (given: Partial<KeptFacts> = {}, device: Partial<KeptFacts['device']> = {}): KeptFacts => ({
  documents: [document()],
  syncs: [sync()],
  log: { ...document(), entries: () => [], waiting: () => 0, notTaken: () => undefined },
  weather: { waiting: () => 0, notTaken: () => undefined },
  ...given,
  device: {
    connection: connection(true),
    lasting: () => true,
    fault: () => undefined,
    shop: document(),
    shopSync: sync(),
    ...device,
  },
})

const unknown = { waiting: () => undefined }

describe('where edits are kept', () => {
  it('is on the server too when everything is there', () => {
    expect(keptState(facts()).where).toBe('both')
  })

  it.each([
    ['a document has not met the server', facts({ syncs: [sync(unknown)] })],
    ['an edit of a document waits', facts({ syncs: [sync({ waiting: () => 1 })] })],
    ['the log was not compared', facts({ log: { ...facts().log, ...unknown } })],
    ['the weather was not asked for', facts({ weather: { ...unknown, notTaken: () => undefined } })],
    ['the list of jobs has not met the server', facts({}, { shopSync: sync(unknown) })],
    ['there is no server', facts({}, { connection: connection(false) })],
  ])('is on this device alone while %s', (_, given) => {
    expect(keptState(given).where).toBe('device')
  })

  it.each([
    ['a document is being written', facts({ documents: [document({ kept: () => false })] })],
    ['the list of jobs is', facts({}, { shop: document({ kept: () => false }) })],
    ['the database was taken away', facts({}, { fault: () => 'web.deviceLost' })],
  ])('is nowhere for sure while %s', (_, given) => {
    expect(keptState(given).where).toBe('writing')
  })

  it('says what is wrong with it, and what the server does not take', () => {
    expect(keptState(facts({}, { fault: () => 'web.deviceLost' })).fault).toBe('web.deviceLost')
    const why = { code: 'web.serverFull', data: {} }
    expect(keptState(facts({}, { shopSync: sync({ notTaken: () => why }) })).notTaken).toEqual(why)
    expect(keptState(facts({ weather: { ...unknown, notTaken: () => why } })).notTaken).toEqual(why)
  })
})
