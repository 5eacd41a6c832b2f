import { describe, expect, it } from 'vitest'
import { lastTurns } from '../screens/today/day-rows.ts'
import { type StepTurn, tellLog, tellStep } from './tell-log.ts'

const nowMs = Date.parse('2027-04-12T08:10:20+02:00')

/** Ids that fall from one entry to the next: the worst for entries of one minute. */
function desk() {
  const log: { id: string; sent: boolean; cells: Record<string, string> }[] = []
  const addEntry = (cells: object): string => {
    const id = `entry ${9 - log.length}`
    log.push({ id, sent: false, cells: cells as Record<string, string> })
    return id
  }
  const tell = (kind: StepTurn) =>
    tellStep({ log, addEntry, timeZone: 'Europe/Stockholm' }, { kind, step: 'sand', nowMs })
  return { log, addEntry, tell }
}

describe('tellStep', () => {
  it('lets the last of several turns in one minute stand', () => {
    const { log, tell } = desk()
    for (const kind of ['started', 'done', 'not done'] as const) {
      tell(kind)
      expect(lastTurns(log).get('sand')).toBe(kind)
    }
  })
  it('writes the first one as of now, in the time of the place', () => {
    const { log, tell } = desk()
    tell('done')
    expect(log[0]?.cells.at).toBe('2027-04-12T08:10+02:00')
  })
})

describe('tellLog', () => {
  it('keeps notes, which are of no step, in the order in which they were written', () => {
    const { log, addEntry } = desk()
    const view = { log, addEntry, timeZone: 'Europe/Stockholm' }
    for (const text of ['first', 'second', 'third']) tellLog(view, { cells: { kind: 'note', text }, nowMs })
    expect(log.map(({ cells }) => cells.at)).toEqual([
      '2027-04-12T08:10+02:00',
      '2027-04-12T08:11+02:00',
      '2027-04-12T08:12+02:00',
    ])
  })
})
