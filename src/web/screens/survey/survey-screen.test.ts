import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import type { RawDocument } from '#job'
import { plan } from '#plan'
import { createWords } from '#words'
import { planInput, projectRaw, sampleRaw, withCell } from '../../../../test/support/samples.ts'
import type { ScreenProps } from '../screen.ts'
import { SurveyScreen } from './survey-screen.tsx'

const words = createWords({ locale: 'en-GB', system: 'metric', timeZone: 'UTC' })
const raw = sampleRaw('open-powerboat')
const ids = Object.keys(raw.work.findings ?? {})

/** As the sheet opens: its title and the sentence under it. */
function opening(document: RawDocument): string {
  const view = {
    id: 'a job',
    raw: document,
    plan: plan(planInput(projectRaw(document), undefined)),
    problems: [],
    log: [],
    words,
    locale: 'en-GB',
    system: 'metric',
    timeZone: 'UTC',
    nowMs: 0,
    change: { number: 0 },
    readOnly: false,
  }
  const props = {
    view,
    rest: '',
    href: (room: string) => `/job/a/${room}`,
    go: () => undefined,
    block: null,
    head: { title: 'Boat' },
  }
  return renderToStaticMarkup(createElement(SurveyScreen, props as unknown as ScreenProps))
}

const unreadable = (document: RawDocument, id: string): RawDocument =>
  withCell(document, 'work', ['findings', id, 'hours'], 'a day or so')

describe('the sheet Survey', () => {
  it('counts the findings it plans, and says nothing of others where there are none', () => {
    expect(opening(raw)).toContain(`${ids.length} findings`)
    expect(opening(raw)).not.toContain('cannot be read')
  })

  it('names a finding that something unreadable keeps out of its hours', () => {
    const text = opening(unreadable(raw, ids[0]!))
    expect(text).toContain('One more finding is not in these hours')
  })

  it('never says that nothing was found when what was found cannot be read', () => {
    const text = opening(ids.reduce(unreadable, raw))
    expect(text).not.toContain('Nothing was found')
    expect(text).toContain(`${ids.length} findings written down, and none of them can be read yet.`)
  })
})
