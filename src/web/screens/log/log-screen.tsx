/** Log: what really happened, by the time it is about, the newest first. Entries stay as they are; a correction is a new one. */
import { useState } from 'react'
import { correctedIds } from '#job'
import { labelOf } from '#words'
import type { JobView, LogLine } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { tellLog } from '../../job/tell-log.ts'
import { Button, Ghost, Ledger, Part, Sheet, TextField } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import './log.css'
import { sayEntry, saySetting } from './say-entry.ts'

export const LogScreen = ({ view, head, block }: ScreenProps) => {
  const { log, words, kept } = view
  const days = byDay(view)
  const corrected = correctedIds(log.map(({ id, cells }) => ({ id, corrects: cells.corrects })))
  return (
    <Sheet
      head={head}
      block={block}
      title={words.sentence('log.title', { count: log.length })}
      say={words.sentence('log.say', { waiting: kept.online ? 0 : kept.waiting })}
    >
      <Part title={labelOf('log.write')}>
        <NewNote view={view} />
      </Part>
      {days.map(([date, entries]) => (
        <Part key={date} title={words.date(date)}>
          <Ledger
            caption={words.date(date)}
            bare
            columns={[
              { key: 'time', label: labelOf('log.time'), phone: 'side', width: '112px' },
              { key: 'what', label: labelOf('log.what'), phone: 'first' },
              { key: 'who', label: labelOf('log.who'), phone: 'second' },
              { key: 'sent', label: labelOf('log.sent'), align: 'right', phone: 'second' },
            ]}
            rows={entries.map((entry) => ({
              id: entry.id,
              cells: {
                time: words.time(Date.parse(entry.cells.at ?? ''), view.timeZone),
                what: <What view={view} entry={entry} corrected={corrected.has(entry.id)} />,
                who: entry.cells.by ?? '',
                sent: entry.sent ? '' : labelOf('log.notSent'),
              },
            }))}
          />
        </Part>
      ))}
      {days.length === 0 ? (
        <Part label={labelOf('room.log')}>
          <Ghost kind="table">{words.sentence('log.none')}</Ghost>
        </Part>
      ) : null}
    </Sheet>
  )
}

type WhatProps = { readonly view: JobView; readonly entry: LogLine; readonly corrected: boolean }

/** What was corrected stays to be read, struck through. */
const What = ({ view, entry: { cells }, corrected }: WhatProps) => {
  const said = sayEntry(view, cells)
  const setting = saySetting(view, cells, corrected)
  return (
    <>
      {corrected ? <s>{said}</s> : said}
      {setting.length === 0 ? null : <span className="log-setting">{setting.join('; ')}</span>}
    </>
  )
}

const NewNote = ({ view }: { readonly view: JobView }) => {
  const [text, setText] = useState('')
  const write = (): void => {
    if (text.trim() === '') return
    tellLog(view, { cells: { kind: 'note', text: text.trim() }, nowMs: Date.now() })
    setText('')
  }
  return (
    <div className="log-new">
      <TextField label={labelOf('log.note')} value={text} onCommit={setText} onType={setText} lines />
      <Button next onClick={write} disabled={text.trim() === ''}>
        {labelOf('log.keep')}
      </Button>
    </div>
  )
}

/** Entries whose time cannot be read stand under the day they were found. */
export function byDay({
  log,
  timeZone,
  nowMs,
}: Pick<JobView, 'log' | 'timeZone' | 'nowMs'>): readonly (readonly [string, readonly LogLine[]])[] {
  const days = new Map<string, LogLine[]>()
  const at = (entry: LogLine): number => {
    const ms = Date.parse(entry.cells.at ?? '')
    return Number.isNaN(ms) ? nowMs : ms
  }
  for (const entry of [...log].sort((a, b) => at(b) - at(a))) {
    const day = localDate(Math.floor(at(entry) / 60_000), timeZone)
    days.set(day, [...(days.get(day) ?? []), entry])
  }
  return [...days]
}
