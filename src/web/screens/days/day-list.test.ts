import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, it } from 'vitest'
import { createWords } from '#words'
import { MIDNIGHT, paperPlan } from '../../../../test/support/paper-plan.ts'
import type { JobView } from '../../job/job-view.ts'
import { DayList } from './day-list.tsx'
import { WhyHere } from './why-here.tsx'
import { zoneDays } from './zone-days.ts'

const coat = 'coat:port:primer:1'
const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'UTC' })
const view = { raw: { work: {} }, words, timeZone: 'UTC' } as unknown as JobView
const within = { fromMinute: MIDNIGHT, toMinute: MIDNIGHT + 1440 }
const planWith = (verdict: 'go' | 'unknown') => {
  const placed = paperPlan.days.placed.map((one) => (one.step === coat ? { ...one, verdict } : one))
  const conditions = { ...paperPlan.conditions, zones: [], air: [] }
  return { ...paperPlan, conditions, days: { ...paperPlan.days, placed } }
}
const listed = (verdict: 'go' | 'unknown') => {
  const days = [{ date: '2027-05-10', ...within }]
  const props = { view, plan: planWith(verdict), days, href: (room: string) => room, go: () => undefined }
  return renderToStaticMarkup(createElement(DayList, props))
}

it('the hours of a coat that nobody knows are never called good, on the screen and in the printed week', () => {
  expect(listed('go')).toContain('good')
  expect(listed('unknown')).toContain('not known')
  expect(listed('unknown')).not.toContain('good')
})

it('nor are they said to be any hour, where one asks why a coat stands there', () => {
  const plan = planWith('unknown')
  const bar = zoneDays({ plan, windows: [], within })
    .flatMap(({ bars }) => bars)
    .find(({ step }) => step === coat)!
  const props = { view, plan, windows: [], chosen: { kind: 'bar' as const, bar }, onChoose: () => undefined }
  const text = renderToStaticMarkup(createElement(WhyHere, props))
  expect(text).toContain('nobody knows whether they can take paint')
  expect(text).not.toContain('Any hour of a shift')
})
