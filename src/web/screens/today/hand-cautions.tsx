/**
 * The cautions before the step in hand, worst first. A danger stands open until it was read today; of the rest the
 * first sentence stands there until then. What was read today is one line a
 * signal word, and opens again with one tap.
 */
import { useState } from 'react'
import type { Caution } from '#plan'
import { labelOf } from '#words'
import { browserShelf } from '../../device/browser-shelf.ts'
import type { JobView } from '../../job/job-view.ts'
import { Button, CautionPanel, SignalLine } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { CautionOf, cautionText } from '../sheet-cautions.tsx'
import { cautionKey, readCautions, writeCautions } from './read-cautions.ts'

export type HandCautionsProps = {
  readonly view: Pick<JobView, 'id' | 'words'>
  readonly plan: ShownPlan
  readonly step: string
  /** The date now, at the boat's place. */
  readonly today: string
}

export const HandCautions = ({ view, plan, step, today }: HandCautionsProps) => {
  const day = { job: view.id, date: today }
  const [kept, setKept] = useState(() => ({ day, read: readCautions(browserShelf(), day) }))
  // Past midnight with the sheet open, everything is unread again.
  const read = kept.day.date === today ? kept.read : new Set<string>()
  const own = plan.cautions.cautions.filter(({ steps }) => steps.includes(step.replace(/^key:/, '')))
  const isRead = (caution: Caution): boolean => read.has(cautionKey(caution))
  const markRead = (some: readonly Caution[]): void => {
    const now = new Set([...read, ...some.map(cautionKey)])
    setKept({ day, read: now })
    writeCautions(browserShelf(), day, now)
  }
  const unread = own.filter((caution) => caution.severity !== 'danger' && !isRead(caution))
  return (
    <>
      {signals.map((signal) => {
        const said = own.filter(({ severity }) => severity === signal)
        return (
          <Signal
            key={signal}
            view={view}
            signal={signal}
            unread={said.filter((caution) => !isRead(caution))}
            read={said.filter(isRead)}
            onRead={(caution) => markRead([caution])}
          />
        )
      })}
      {unread.length === 0 ? null : (
        <div className="today-unread">
          <p className="today-said">{view.words.sentence('todayscreen.ownSheet')}</p>
          <Button onClick={() => markRead(unread)}>
            {view.words.sentence('todayscreen.allRead', { count: unread.length })}
          </Button>
        </div>
      )}
    </>
  )
}

const signals = ['danger', 'warning', 'caution', 'notice'] as const

type SignalProps = {
  readonly view: HandCautionsProps['view']
  readonly signal: (typeof signals)[number]
  readonly unread: readonly Caution[]
  readonly read: readonly Caution[]
  readonly onRead: (caution: Caution) => void
}

const Signal = ({ view: { words }, signal, unread, read, onRead }: SignalProps) => (
  <>
    {signal === 'danger'
      ? unread.map((caution) => (
          <CautionOf key={caution.code} caution={caution} words={words}>
            <Button onClick={() => onRead(caution)}>{labelOf('today.read')}</Button>
          </CautionOf>
        ))
      : null}
    {signal !== 'danger' && unread.length > 0 ? (
      <CautionPanel signal={signal}>
        <ul className="today-cautions">
          {unread.map(({ code, data }) => (
            <li key={code}>{firstSentence(words.sentence(code, data))}</li>
          ))}
        </ul>
      </CautionPanel>
    ) : null}
    {read.length === 0 ? null : (
      <SignalLine
        signal={signal}
        first={words.sentence('todayscreen.readLine', {
          count: read.length,
          first: firstSentence(words.sentence(read[0]?.code ?? '', read[0]?.data)),
        })}
      >
        {read.map((caution) => (
          <p key={caution.code}>{cautionText(caution, words)}</p>
        ))}
      </SignalLine>
    )}
  </>
)

/** Up to the first full stop that a space follows. */
const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/s.exec(text)?.[0] ?? text
