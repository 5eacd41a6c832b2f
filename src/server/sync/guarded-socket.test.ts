import { EventEmitter } from 'node:events'
import { describe, expect, it } from 'vitest'
import type { WebSocket } from 'ws'
import type { Sees } from '#replica'
import { serverLimits } from '../limits.ts'
import { GuardedSocket } from './guarded-socket.ts'

const signIn = 2
const who = 3
const leave = 7

function message(document: string, type: number, ...rest: readonly number[]): Buffer {
  const name = Buffer.from(document)
  return Buffer.concat([Buffer.from([name.length]), name, Buffer.from([type, ...rest])])
}
const signingIn = (document: string): Buffer => message(document, signIn, 0, 0)
const asking = (document: string): Buffer => message(document, who)
const leaving = (document: string): Buffer => message(document, leave)

function guarded(sees: Sees = 'all') {
  const closed: number[] = []
  const outer = Object.assign(new EventEmitter(), {
    OPEN: 1,
    readyState: 1,
    bufferedAmount: 0,
    send: () => {},
    close: (code: number) => void closed.push(code),
    terminate: () => void closed.push(0),
  })
  const limits = { ...serverLimits, messageBytes: 100 }
  const socket = new GuardedSocket(outer as unknown as WebSocket, { limits, sees })
  const passed: Buffer[] = []
  socket.on('message', (data: Buffer) => void passed.push(data))
  const say = (...all: readonly Buffer[]): void => {
    for (const data of all) outer.emit('message', data, true)
  }
  return { socket, outer, closed, passed, say }
}

describe('a socket under guard', () => {
  it('hears of a document only once it is asked to open it', () => {
    const { passed, closed, say } = guarded()
    say(asking('work:teal'), signingIn('work:teal'), asking('work:teal'), asking('shop'))
    expect(passed).toEqual([signingIn('work:teal'), asking('work:teal')])
    expect(closed).toEqual([])
  })

  it('hears nothing about prices from one who may not see them but that they ask', () => {
    const { passed, say } = guarded('work')
    say(signingIn('money:teal'), asking('money:teal'), leaving('money:teal'))
    expect(passed).toEqual([signingIn('money:teal')])
  })

  it('opens a document again only when it was closed', () => {
    const { socket, passed, closed, say } = guarded()
    say(signingIn('work:teal'), leaving('work:teal'), signingIn('work:teal'), asking('work:teal'))
    expect(passed).toEqual([signingIn('work:teal'), leaving('work:teal')])
    socket.send(leaving('work:teal'))
    expect(passed.slice(2)).toEqual([signingIn('work:teal'), asking('work:teal')])
    expect(closed).toEqual([])
  })

  it('keeps no more for such a document than one message may hold', () => {
    const { closed, say } = guarded()
    say(signingIn('work:teal'), leaving('work:teal'))
    for (let time = 0; time < 20; time += 1) say(asking('work:teal'))
    expect(closed).toContain(1008)
  })

  it('is closed when the document server closes a document that the page still has', () => {
    const { socket, closed, say } = guarded()
    say(signingIn('work:teal'))
    socket.send(leaving('work:teal'))
    expect(closed).toEqual([1013])
  })

  it('is dropped when its page does not read', () => {
    const { socket, outer, closed } = guarded()
    outer.bufferedAmount = serverLimits.waitingBytes + 1
    socket.send(asking('work:teal'))
    expect(closed).toEqual([0])
  })
})
