/** One mishap: cautions first, the steps of this minute with a tick each, what comes after, what never, and the log. */
import { type ReactNode, useState } from 'react'
import { type MishapId, mishapActs, mishaps } from '#catalogue'
import { labelOf } from '#words'
import { browserShelf } from '../../device/browser-shelf.ts'
import type { JobView } from '../../job/job-view.ts'
import {
  Button,
  CautionPanel,
  Icon,
  Part,
  PartBlock,
  Sheet,
  type SheetHead,
  type Signal,
  SignalLine,
  YesField,
} from '../../parts/index.ts'
import { readTicks, writeTicks } from './kept-ticks.ts'
import { mishapFigures } from './mishap-data.ts'
import { WriteInLog } from './write-in-log.tsx'

export type MishapSheetProps = {
  readonly id: MishapId
  readonly view: JobView
  readonly block: ReactNode
  readonly go: (href: string) => void
  readonly href: ((room: string) => string) | undefined
  readonly head: SheetHead | undefined
  readonly onBack: () => void
}

export const MishapSheet = ({ id, view, block, go, href, head, onBack }: MishapSheetProps) => {
  const { see, now, after, never } = mishapActs[id]
  const figures = mishapFigures(id)
  const say = (code: string): string => view.words.sentence(code, figures)
  const place = { job: view.id, mishap: id }
  const [done, setDone] = useState(() => readTicks(browserShelf(), place, Date.now()))
  const tick = (code: string, now: boolean): void => {
    const next = [...done.filter((one) => one !== code), ...(now ? [code] : [])]
    setDone(next)
    writeTicks(browserShelf(), place, { done: next, nowMs: Date.now() })
  }
  const signal = mishaps[id].cells.signal as Signal | undefined
  return (
    <Sheet
      title={labelOf(`mishapName.${id}`)}
      say={say(see)}
      head={head ?? { title: labelOf('whatNow.name') }}
      action={<Button onClick={onBack}>{labelOf('whatNow.other')}</Button>}
      block={block}
    >
      <Part
        raised
        title={labelOf('whatNow.now')}
        notes={
          <PartBlock title={labelOf('whatNow.never')}>
            <ul className="what-now-never">
              {never.map((code) => (
                <li key={code}>
                  <Icon kind="cross" />
                  <span>{say(code)}</span>
                </li>
              ))}
            </ul>
          </PartBlock>
        }
      >
        <div className="what-now-caution">
          <Caution view={view} signal={signal} />
        </div>
        <ol className="what-now-steps">
          {now.map((code, index) => (
            <Tick
              key={code}
              number={index + 1}
              text={say(code)}
              done={done.includes(code)}
              onTurn={(now) => tick(code, now)}
            />
          ))}
        </ol>
      </Part>
      <Part title={labelOf('whatNow.after')}>
        <ul className="what-now-after">
          {after.map((code) => (
            <li key={code}>{say(code)}</li>
          ))}
        </ul>
        {mishaps[id].certainty === 'assumed' ? (
          <p className="what-now-assumed">{say('whatnow.assumed')}</p>
        ) : null}
      </Part>
      <WriteInLog id={id} view={view} go={go} href={href} />
    </Sheet>
  )
}

type CautionProps = { readonly view: Pick<JobView, 'words'>; readonly signal: Signal | undefined }

/** Where only paint is in danger, what to do within minutes comes first to the eye: the caution is one line over it. */
const Caution = ({ view: { words }, signal }: CautionProps) =>
  signal === undefined ? (
    <SignalLine signal="caution" first={words.sentence('whatnow.cautionFirst')}>
      {words.sentence('whatnow.cautionWork')}
    </SignalLine>
  ) : (
    <CautionPanel signal={signal}>
      <p>{words.sentence('whatnow.cautionPeople')}</p>
    </CautionPanel>
  )

type TickProps = {
  readonly number: number
  readonly text: string
  readonly done: boolean
  readonly onTurn: (done: boolean) => void
}

const Tick = ({ number, text, done, onTurn }: TickProps) => (
  <li>
    <YesField
      boxLast
      label={
        <span className="what-now-step">
          <span className="what-now-number">{number}</span>
          <span className={done ? 'what-now-done' : undefined}>{text}</span>
        </span>
      }
      value={done}
      onChange={onTurn}
    />
  </li>
)
