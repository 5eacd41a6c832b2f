import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import { MIDNIGHT, paperPlan } from '../../../../test/support/paper-plan.ts'
import type { JobView } from '../../job/job-view.ts'
import { DaysScreen } from '../days/days-screen.tsx'
import type { ScreenProps } from '../screen.ts'
import { TodayScreen } from './today-screen.tsx'

const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'UTC' })
const view = (more: Partial<JobView>): JobView =>
  ({
    id: 'a job',
    raw: { work: {} },
    plan: paperPlan,
    problems: [],
    log: [],
    words,
    locale: 'en-GB',
    system: 'metric',
    timeZone: 'UTC',
    nowMs: (MIDNIGHT + 7 * 60) * 60_000,
    change: { number: 0 },
    readOnly: false,
    ...more,
  }) as unknown as JobView
const textOf = (Screen: (props: ScreenProps) => ReturnType<typeof createElement>, of: JobView, rest = '') => {
  const props = {
    view: of,
    rest,
    href: (room: string) => `/job/a/${room}`,
    go: () => undefined,
    block: null,
    head: { title: 'Boat' },
  } as unknown as ScreenProps
  return renderToStaticMarkup(createElement(Screen, props)).replaceAll('\u2009', ' ')
}

describe('the sheet Today', () => {
  it('opens with hours, and ticks every step of the day', () => {
    const text = textOf(TodayScreen, view({}))
    expect(text).toMatch(/<h1[^>]*>[^<]*\d\d:\d\d/)
    expect(text.match(/type="checkbox"/g)?.length).toBe(3)
  })
  it('says what the next working day brings when there is no work', () => {
    const text = textOf(TodayScreen, view({}), '2027-05-01')
    expect(text).toContain('No work on Sat, 1 May 2027')
    expect(text).toContain('The next working day is Mon, 10 May 2027')
  })
  it('waits for the first plan, and takes an address that is no date for today', () => {
    const { plan: _, ...none } = view({})
    expect(textOf(TodayScreen, none, 'yesterday')).toContain('Mon, 10 May 2027')
  })
})

describe('the sheet Days', () => {
  it('opens with dates, and says so where nothing is planned', () => {
    expect(textOf(DaysScreen, view({}))).toMatch(/<h1[^>]*>[^<]+/)
    const days = { ...paperPlan.days, days: [], placed: [], unplaced: [] }
    expect(textOf(DaysScreen, view({ plan: { ...paperPlan, days } }))).toContain(
      'No work stands on these days',
    )
  })
  it('says which step finds no place, and why', () => {
    const { workEndMinute: _end, launchMinute: _launch, ...rest } = paperPlan.days
    const days = { ...rest, unplaced: [{ step: 'mask:transom', reason: 'people' as const }] }
    const text = textOf(DaysScreen, view({ plan: { ...paperPlan, days } }))
    expect(text).toContain('One step finds no place')
    expect(text).toContain('nobody who may do it works enough hours')
    expect(text).not.toContain('waits for what finds no place')
  })
  it('tells the cause first, and what only waits for it in one line', () => {
    const { workEndMinute: _end, launchMinute: _launch, ...rest } = paperPlan.days
    const unplaced = [
      { step: 'coat:transom:primer:1', reason: 'needs' as const },
      { step: 'mask:transom', reason: 'people' as const },
      { step: 'handover', reason: 'needs' as const },
    ]
    const text = textOf(DaysScreen, view({ plan: { ...paperPlan, days: { ...rest, unplaced } } }))
    const [cause, waits] = ['works enough hours', '2 steps wait for what finds no place'].map((part) =>
      text.indexOf(part),
    )
    expect(cause).toBeGreaterThan(0)
    expect(waits).toBeGreaterThan(cause!)
    expect(text).not.toContain('has no place either')
  })
  it('says the hours that the quote charges beside those of the work', () => {
    const days = { ...paperPlan.days, sessionMinutes: 120 }
    const hours =
      days.days.flatMap(({ people }) => people).reduce((sum, { minutes }) => sum + minutes, 0) / 60
    const textWith = (sessionMinutes: number) =>
      textOf(DaysScreen, view({ plan: { ...paperPlan, days: { ...days, sessionMinutes } } }))
    expect(textWith(120)).toContain(
      `with opening and closing up each day, ${words.figure('hours', hours + 2)}`.replaceAll('\u2009', ' '),
    )
    // 206 hours of work are no days, of which nobody knows how long they are.
    const long = Math.ceil(hours) + 198
    expect(textWith((long - hours) * 60)).toContain(`closing up each day, ${long} h.`)
  })
})
