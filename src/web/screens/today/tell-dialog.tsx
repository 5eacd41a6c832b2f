/** What happened with one step, at any day and time that is past: who, and of a coat batches, quantity, film and skin. */
import { useState } from 'react'
import { logFields, type QuantityField, type RawCells } from '#job'
import { labelOf, problemText } from '#words'
import { MeasureField } from '../../fields/measure-field.tsx'
import type { JobView } from '../../job/job-view.ts'
import { localDate, localInstant } from '../../job/local-date.ts'
import { isDate, minuteAt } from '../../job/local-days.ts'
import { tellPast } from '../../job/tell-log.ts'
import { Button, ChoiceField, DateField, Dialog, TextField, TimeField } from '../../parts/index.ts'
import { entryOf } from './who-of.ts'

export type TellDialogProps = {
  readonly view: JobView
  readonly title: string
  readonly row: { readonly step: string; readonly people: readonly string[]; readonly done: boolean }
  readonly isCoat: boolean
  /** When it is most likely to have happened. */
  readonly atMs: number
  readonly onClose: () => void
}

type Kind = 'done' | 'started' | 'not done' | 'note'
const measures = ['used', 'wetFilm', 'skin'] as const
type Texts = Readonly<Record<'date' | 'time' | 'by' | 'batch' | 'text' | (typeof measures)[number], string>>

export const TellDialog = ({ view, title, row, isCoat, atMs: first, onClose }: TellDialogProps) => {
  const { timeZone, words } = view
  const [kind, setKind] = useState<Kind>(row.done ? 'note' : 'done')
  const [texts, setTexts] = useState<Texts>(() => ({
    ...{ batch: '', used: '', wetFilm: '', skin: '', text: '', by: entryOf(view, row).by ?? '' },
    date: localDate(Math.floor(first / 60_000), timeZone),
    time: localInstant(first, timeZone).slice(11, 16),
  }))
  const set = (key: keyof Texts) => (text: string) => setTexts((now) => ({ ...now, [key]: text }))
  const atMs = momentOf(texts, timeZone)
  const ahead = atMs !== undefined && atMs > Date.now() + 60_000
  const write = (): void => {
    if (atMs === undefined) return
    tellPast(view, { cells: cellsOf({ kind, step: row.step, texts, isCoat }), atMs, nowMs: Date.now() })
    onClose()
  }
  return (
    <Dialog
      title={title}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{labelOf('today.cancel')}</Button>
          <Button next disabled={view.readOnly || atMs === undefined || ahead} onClick={write}>
            {labelOf('today.keep')}
          </Button>
        </>
      }
    >
      <ChoiceField<Kind>
        label={labelOf('today.whatHappened')}
        choices={kinds.map((value) => ({ value, label: labelOf(`logKind.${value}`) }))}
        value={kind}
        onChange={setKind}
      />
      <div className="tell-boxes">
        <DateField
          label={labelOf('today.date')}
          value={texts.date}
          onCommit={set('date')}
          problem={ahead ? words.sentence('todayscreen.ahead') : undefined}
        />
        <TimeField label={labelOf('today.time')} value={texts.time} onCommit={set('time')} />
      </div>
      <TextField label={labelOf('cell.log.by')} value={texts.by} onCommit={set('by')} onType={set('by')} />
      {isCoat ? <CoatBoxes view={view} texts={texts} set={set} /> : null}
      <TextField
        label={labelOf('cell.log.text')}
        value={texts.text}
        onCommit={set('text')}
        onType={set('text')}
        lines
      />
    </Dialog>
  )
}

const kinds = ['done', 'started', 'not done', 'note'] as const

type CoatBoxesProps = {
  readonly view: JobView
  readonly texts: Texts
  readonly set: (key: keyof Texts) => (text: string) => void
}

/** As on the day sheet; every one may stay empty. */
const CoatBoxes = ({ view, texts, set }: CoatBoxesProps) => (
  <>
    <TextField
      label={labelOf('cell.log.batch')}
      value={texts.batch}
      onCommit={set('batch')}
      onType={set('batch')}
    />
    <div className="tell-boxes">
      {measures.map((key) => (
        <MeasureField
          key={key}
          label={labelOf(`cell.log.${key}`)}
          field={logFields.log.fields[key] as QuantityField}
          system={view.system}
          value={texts[key]}
          onCommit={set(key)}
          say={(fault) => problemText(view.words, { ...fault, pointer: `/log/new/${key}` })}
        />
      ))}
    </div>
  </>
)

function momentOf({ date, time }: Texts, timeZone: string): number | undefined {
  const clock = /^(\d\d):(\d\d)/.exec(time)
  if (!isDate(date) || clock === null) return undefined
  return minuteAt(date, Number(clock[1]) * 60 + Number(clock[2]), timeZone) * 60_000
}

type Told = { readonly kind: Kind; readonly step: string; readonly texts: Texts; readonly isCoat: boolean }

/** What stayed empty is left out. */
export function cellsOf({ kind, step, texts, isCoat }: Told): RawCells {
  const { by, text, batch, used, wetFilm, skin } = texts
  const coat = isCoat ? { batch, used, wetFilm, skin } : {}
  const told = Object.entries({ by, ...coat, text }).map(([key, typed]) => [key, typed.trim()] as const)
  return { kind, step, ...Object.fromEntries(told.filter(([, typed]) => typed !== '')) }
}
