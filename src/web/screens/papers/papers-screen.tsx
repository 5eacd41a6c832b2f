/** Papers: made in the browser, so that they come out in the shed too. */
import { useState } from 'react'
import { writeJson } from '#job'
import { type Paper, paperJob } from '#papers'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Banner, Button, ChoiceField, DateField, Part, Progress, Sheet } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import type { PaperKindOffered } from './print.ts'
import './papers.css'

const kinds: readonly PaperKindOffered[] = [
  'day-sheet',
  'plan-summary',
  'quote',
  'change-order',
  'shopping-list',
]
const needMoney: readonly PaperKindOffered[] = ['quote', 'change-order']

type Made = { readonly name: string; readonly url: string }

export const PapersScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words } = view
  const [page, setPage] = useState<'A4' | 'Letter'>(view.system === 'us' ? 'Letter' : 'A4')
  const [date, setDate] = useState('')
  const [busy, setBusy] = useState<string>()
  const [fault, setFault] = useState<string>()
  const [made, setMade] = useState<readonly Made[]>([])
  const offered = kinds.filter((kind) => plan?.money !== undefined || !needMoney.includes(kind))
  const make = async (kind: PaperKindOffered): Promise<void> => {
    setBusy(kind)
    setFault(undefined)
    try {
      setMade((await papers(view, kind, { page, date })).map(linked))
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error))
    }
    setBusy(undefined)
  }
  return (
    <Sheet
      head={head}
      block={block}
      title={words.sentence('papers.title', { count: offered.length })}
      say={words.sentence('papers.say')}
    >
      {fault === undefined ? null : <Banner fault>{words.sentence('papers.failed', { text: fault })}</Banner>}
      <Part title={labelOf('papers.make')}>
        <div className="papers-choices">
          <ChoiceField
            label={labelOf('papers.page')}
            value={page}
            choices={(['A4', 'Letter'] as const).map((value) => ({ value, label: value }))}
            onChange={setPage}
          />
          <DateField label={labelOf('papers.day')} value={date} onCommit={setDate} />
        </div>
        <ul className="papers-list">
          {offered.map((kind) => (
            <li key={kind} className="papers-row">
              <div>
                <b>{labelOf(`paperKind.${kind}`)}</b>
                <p className="papers-about">{words.sentence(`papers.${about[kind]}`)}</p>
              </div>
              <Button onClick={() => void make(kind)} disabled={!plan || busy !== undefined}>
                {labelOf('papers.print')}
              </Button>
            </li>
          ))}
          <li className="papers-row">
            <div>
              <b>{labelOf('papers.document')}</b>
              <p className="papers-about">{words.sentence('papers.aboutDocument')}</p>
            </div>
            <Button onClick={() => void jobFiles(view).then(setMade)}>{labelOf('papers.save')}</Button>
          </li>
        </ul>
        {busy === undefined ? null : <Progress label={labelOf('papers.printing')} />}
        {made.length === 0 ? null : (
          <ul className="papers-made" aria-live="polite">
            {made.map(({ name, url }) => (
              <li key={url}>
                <a href={url} target="_blank" rel="noreferrer">
                  {words.sentence('papers.show', { file: name })}
                </a>{' '}
                <a href={url} download={name}>
                  {labelOf('papers.saveFile')}
                </a>
              </li>
            ))}
          </ul>
        )}
      </Part>
    </Sheet>
  )
}

const about: Readonly<Record<PaperKindOffered, string>> = {
  'plan-summary': 'aboutSummary',
  'day-sheet': 'aboutDay',
  quote: 'aboutQuote',
  'change-order': 'aboutChange',
  'shopping-list': 'aboutShopping',
}

type Options = { readonly page: 'A4' | 'Letter'; readonly date: string }

async function papers(
  view: JobView,
  kind: PaperKindOffered,
  { page, date }: Options,
): Promise<readonly Paper[]> {
  const [{ print }, { plan, work, judgedFromM }] = await Promise.all([
    import('./print.ts'),
    view.ask({ kind: 'whole' }),
  ])
  return print(kind, {
    plan,
    job: paperJob(work, { judgedFromM }),
    page,
    ...(date === '' ? {} : { date }),
  })
}

const typeOf = (name: string): string =>
  name.endsWith('.pdf') ? 'application/pdf' : name.endsWith('.csv') ? 'text/csv' : 'application/json'

const linked = ({ name, bytes }: Pick<Paper, 'name' | 'bytes'>): Made => ({
  name,
  url: URL.createObjectURL(new Blob([bytes.slice()], { type: typeOf(name) })),
})

/** The document, the weather it goes by and what a logger read: together they plan elsewhere as they do here. */
async function jobFiles(view: JobView): Promise<readonly Made[]> {
  const { id, raw } = view
  const document = linked({ name: `${id}.json`, bytes: new TextEncoder().encode(writeJson(raw)) })
  const rows = [
    { name: `${id}.weather.csv`, bytes: await view.weatherFile('hash') },
    { name: `${id}.typical.csv`, bytes: await view.weatherFile('typicalHash') },
    { name: `${id}.logger.csv`, bytes: await view.weatherFile('loggerHash') },
  ]
  return [document, ...rows.flatMap(({ name, bytes }) => (bytes ? [linked({ name, bytes })] : []))]
}
