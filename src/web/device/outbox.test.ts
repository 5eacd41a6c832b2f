import { describe, expect, it } from 'vitest'
import { createOutbox, type Outbox, type OutboxPort } from './outbox.ts'
import { jobsOf } from './outbox-port.ts'

type World = {
  online: boolean
  nowMs: number
  readonly unsent: Set<string>
  readonly unsure: Set<string>
  /** Not taken by the server. */
  readonly refused: Set<string>
  readonly sent: string[]
  compared: number
  /** Sending ends by itself, unless it is to be stopped. */
  slow: boolean
}

const start = (given: Partial<World> = {}): { readonly world: World; readonly outbox: Outbox } => {
  const world: World = {
    online: true,
    nowMs: 0,
    unsent: new Set(),
    unsure: new Set(),
    refused: new Set(),
    sent: [],
    compared: 0,
    slow: false,
    ...given,
  }
  const port: OutboxPort = {
    nowMs: () => world.nowMs,
    online: () => world.online,
    unsent: async () => [...world.unsent],
    unsure: async () => [...world.unsure],
    compared: async () => {
      world.compared += 1
    },
    send: async (job, stop) => {
      if (world.slow) await new Promise((resolve) => stop.addEventListener('abort', resolve))
      if (stop.aborted) return false
      world.sent.push(job)
      if (world.refused.has(job)) throw new Error('refused')
      world.unsent.delete(job)
      world.unsure.delete(job)
      return true
    },
  }
  return { world, outbox: createOutbox(port) }
}

describe('edits of jobs that are not open', () => {
  it('are counted while there is no server, and sent one after the other when there is', async () => {
    const { world, outbox } = start({ online: false, unsent: new Set(['b', 'a']) })
    await outbox.look()
    expect([outbox.onlyHere(), world.sent]).toEqual([['a', 'b'], []])
    world.online = true
    await outbox.look()
    expect([outbox.onlyHere(), world.sent]).toEqual([[], ['a', 'b']])
  })

  it('stay counted where the server does not take them, are left alone for a while, and hold up no other', async () => {
    const { world, outbox } = start({ unsent: new Set(['a', 'b']), refused: new Set(['a']) })
    await outbox.look()
    expect([outbox.onlyHere(), world.sent]).toEqual([['a'], ['a', 'b']])
    world.nowMs = 60_000
    await outbox.look()
    expect(world.sent).toHaveLength(2)
    await outbox.lookAnew()
    world.nowMs = 11 * 60_000
    await outbox.look()
    expect(world.sent).toEqual(['a', 'b', 'a', 'a'])
  })

  it('of a job that is opened are left to its page, until it is closed', async () => {
    const { world, outbox } = start({ unsent: new Set(['a', 'b']), slow: true })
    const looked = outbox.look()
    await new Promise((resolve) => setTimeout(resolve))
    world.slow = false
    await outbox.hold('a')
    await looked
    expect([outbox.onlyHere(), world.sent]).toEqual([['a'], ['b']])
    outbox.release('a')
    await outbox.look()
    expect([outbox.onlyHere(), world.sent]).toEqual([[], ['b', 'a']])
  })

  it('are left to the last page of a job that stands open twice', async () => {
    const { world, outbox } = start({ unsent: new Set(['a']) })
    await outbox.hold('a')
    await outbox.hold('a')
    outbox.release('a')
    await outbox.look()
    expect(world.sent).toEqual([])
  })

  it('tell those who listen once they are fewer or more', async () => {
    const { world, outbox } = start({ online: false })
    let told = 0
    outbox.listen(() => {
      told += 1
    })
    await outbox.look()
    expect(told).toBe(0)
    world.unsent.add('a')
    await outbox.look()
    await outbox.look()
    expect(told).toBe(1)
  })
})

describe('a server that was started anew', () => {
  it('is given every job again, and counts as compared once it has all of them', async () => {
    const { world, outbox } = start({ unsure: new Set(['a', 'b', 'c']) })
    await outbox.hold('b')
    await outbox.look()
    expect([world.sent, world.compared]).toEqual([['a', 'c'], 0])
    outbox.release('b')
    await outbox.look()
    expect([world.sent, world.compared]).toEqual([['a', 'c', 'b'], 1])
    expect(outbox.onlyHere()).toEqual([])
  })
})

describe('what the database marks', () => {
  it('is of jobs, whichever of their documents it is', () => {
    expect(jobsOf(['work:a-1', 'log:a-1', 'money:b', 'shop'])).toEqual(['a-1', 'b'])
  })
})
