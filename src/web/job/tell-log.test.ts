import { describe, expect, it } from 'vitest'
import { lastTurns } from '../screens/today/day-rows.ts'
import { linesInForce, type StepTurn, tellLog, tellPast, tellStep } from './tell-log.ts'

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

describe('tellPast', () => {
  const atMs = Date.parse('2027-04-07T14:00+02:00')
  it('writes the moment it is about, and when it was written', () => {
    const { log, addEntry } = desk()
    const cells = { kind: 'done', step: 'sand' }
    tellPast({ log, addEntry, timeZone: 'Europe/Stockholm' }, { cells, atMs, nowMs })
    expect(log[0]?.cells).toEqual({
      ...cells,
      at: '2027-04-07T14:00+02:00',
      written: '2027-04-12T08:10+02:00',
    })
  })
  it('takes the place of ticks told for later, and leaves mishaps and other steps alone', () => {
    const { log, addEntry, tell } = desk()
    for (const kind of ['done', 'not done'] as const) tell(kind)
    addEntry({ at: '2027-04-08T09:00+02:00', kind: 'mishap', step: 'sand' })
    addEntry({ at: '2027-04-08T09:00+02:00', kind: 'done', step: 'wash' })
    const view = { log, addEntry, timeZone: 'Europe/Stockholm' }
    tellPast(view, { cells: { kind: 'done', step: 'sand' }, atMs, nowMs })
    expect(log.at(-1)?.cells.corrects).toBe('entry 9, entry 8')
    expect(lastTurns(log).get('sand')).toBe('done')
    expect(linesInForce(log)).toHaveLength(3)
  })
  it('keeps one minute apart from what was told of the step for the same', () => {
    const { log, addEntry } = desk()
    const view = { log, addEntry, timeZone: 'Europe/Stockholm' }
    for (const kind of ['started', 'done'] as const)
      tellPast(view, { cells: { kind, step: 'sand' }, atMs, nowMs })
    expect(log.map(({ cells }) => cells.at)).toEqual(['2027-04-07T14:00+02:00', '2027-04-07T14:01+02:00'])
  })
  it('is as of now for what is now or still to come', () => {
    const { log, addEntry } = desk()
    tellPast(
      { log, addEntry, timeZone: 'Europe/Stockholm' },
      { cells: { kind: 'done', step: 'sand' }, atMs: nowMs + 3_600_000, nowMs },
    )
    expect(log[0]?.cells).toEqual({ at: '2027-04-12T08:10+02:00', kind: 'done', step: 'sand' })
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
