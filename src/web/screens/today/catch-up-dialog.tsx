/** Done up to here: the steps that were planned to be over by now, and one of them as the last that is done. */
import { useEffect, useState } from 'react'
import { describeStep, type Plan } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { pastCells } from '../../job/tell-log.ts'
import { Button, classes, Dialog, Progress } from '../../parts/index.ts'
import { type Behind, behindOf, type Since, upTo } from './behind.ts'
import { entryOf } from './who-of.ts'

export type CatchUpProps = { readonly view: JobView; readonly since: Since; readonly onClose: () => void }

type Found = { readonly plan: Plan; readonly behind: readonly Behind[] } | 'failed'

export const CatchUpDialog = ({ view, since, onClose }: CatchUpProps) => {
  const { words, timeZone } = view
  const found = usePlanThen(view, since)
  const [chosen, setChosen] = useState<string>()
  const behind = typeof found === 'object' ? found.behind : []
  const last = chosen ?? behind.at(-1)?.step
  const done = upTo(behind, last)
  const until = done.at(-1)
  const write = (): void => {
    const nowMs = Date.now()
    view.addEntries(
      done.map((one) =>
        pastCells(view, {
          cells: { kind: 'done', ...entryOf(view, one) },
          atMs: one.endMinute * 60_000,
          nowMs,
        }),
      ),
    )
    onClose()
  }
  return (
    <Dialog
      title={labelOf('today.upToHere')}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{labelOf('today.cancel')}</Button>
          <Button next disabled={view.readOnly || done.length === 0} onClick={write}>
            {words.sentence('todayscreen.writeDone', { count: done.length })}
          </Button>
        </>
      }
    >
      {found === undefined ? (
        <Progress label={labelOf('frame.planning')} />
      ) : found === 'failed' ? (
        <p>{words.sentence('todayscreen.notPlanned')}</p>
      ) : (
        <>
          <p role="status">
            {until === undefined
              ? words.sentence('todayscreen.nothingBehind', { sinceDate: since.date })
              : words.sentence('todayscreen.upTo', {
                  count: done.length,
                  of: behind.length,
                  untilAtMs: until.endMinute * 60_000,
                  timeZone,
                })}
          </p>
          <Behinds
            view={view}
            plan={found.plan}
            behind={behind}
            done={new Set(done.map(({ step }) => step))}
            last={last}
            onChoose={setChosen}
          />
        </>
      )}
    </Dialog>
  )
}

/** The plan as it stood, asked for once: undefined while it is made. */
function usePlanThen(view: JobView, since: Since): Found | undefined {
  const [found, setFound] = useState<Found>()
  // Asked once, or the list would move under the thumb.
  useEffect(() => {
    let open = true
    view
      .ask({ kind: 'what if', entries: {}, nowMs: since.minute * 60_000 })
      .then((plan) => open && setFound({ plan, behind: behindOf(plan, view) }))
      .catch(() => open && setFound('failed'))
    return () => {
      open = false
    }
  }, [])
  return found
}

type BehindsProps = {
  readonly view: JobView
  readonly plan: Plan
  readonly behind: readonly Behind[]
  readonly done: ReadonlySet<string>
  readonly last: string | undefined
  readonly onChoose: (step: string) => void
}

const Behinds = ({ view, plan, behind, done, last, onChoose }: BehindsProps) => {
  const { words, timeZone } = view
  const dateOf = ({ endMinute }: Behind): string => localDate(endMinute, timeZone)
  const days = [...new Set(behind.map(dateOf))].map((date) => ({
    date,
    own: behind.filter((one) => dateOf(one) === date),
  }))
  return days.map(({ date, own }) => (
    <fieldset key={date} className="catch-up-day">
      <legend>
        {words.date(date)}
        <Button onClick={() => onChoose(own.at(-1)?.step ?? '')}>{labelOf('today.wholeDay')}</Button>
      </legend>
      {own.map(({ step, endMinute }) => {
        const { code, data } = describeStep(plan, step)
        return (
          <label key={step} className={classes('catch-up-row', step === last && 'catch-up-last')}>
            <span className="today-row-time">{words.time(endMinute * 60_000, timeZone)}</span>
            <span>{words.sentence(code, data)}</span>
            <input
              type="radio"
              name="up-to"
              className={classes('today-tick', done.has(step) && 'today-tick-done')}
              checked={step === last}
              onChange={() => onChoose(step)}
            />
          </label>
        )
      })}
    </fieldset>
  ))
}
