/** Takes rows of hours from a file on this device: what does not read is told, and a table of unknown columns is asked about. */
import { useState } from 'react'
import type { TableHints, TableLook } from '#intake'
import { labelOf, problemLine } from '#words'
import type { GivenWeather } from '../../device/keep-weather.ts'
import type { JobView } from '../../job/job-view.ts'
import { Progress } from '../../parts/index.ts'
import { readWeatherInWorker } from '../../worker/import-client.ts'
import type { FileProblem } from '../../worker/read-job-files.ts'
import { TableDialog } from './table-dialog.tsx'
import { hintsOf } from './table-said.ts'

/** A table whose columns a person has to say. */
type Asking = {
  readonly file: File
  readonly table: TableLook
  readonly problems: readonly FileProblem[]
}

type State =
  | { readonly kind: 'still' | 'reading' }
  | { readonly kind: 'refused' | 'read'; readonly lines: readonly string[] }

export type TakeRows = {
  readonly state: State
  readonly asking: Asking | undefined
  readonly bring: (file: File, hints?: TableHints) => Promise<void>
  readonly leave: () => void
}

/** @param give what is done with a file that reads; rejects with a code of the words. */
export function useTakeRows(
  view: JobView,
  give: (given: GivenWeather & { readonly file: string }) => Promise<void>,
): TakeRows {
  const { words } = view
  const [state, setState] = useState<State>({ kind: 'still' })
  const [asking, setAsking] = useState<Asking>()
  const bring: TakeRows['bring'] = async (file, hints) => {
    setState({ kind: 'reading' })
    const { given, problems, notes = [], table } = await readWeatherInWorker(file, hints)
    if (!given && table) {
      setState({ kind: 'still' })
      // What was said stays: only the complaints are new.
      return setAsking((was) => ({ file, table: was?.file === file ? was.table : table, problems }))
    }
    setAsking(undefined)
    if (!given) {
      return setState({
        kind: 'refused',
        lines: problems.map((problem) => problemLine(words, file.name, problem)),
      })
    }
    try {
      await give({ ...given, file: file.name })
      setState({ kind: 'read', lines: notes.map(({ code, data }) => words.sentence(code, data)) })
    } catch (error) {
      const code = error instanceof Error ? error.message : 'web.deviceFault'
      setState({ kind: 'refused', lines: [words.sentence(code)] })
    }
  }
  return { state, asking, bring, leave: () => setAsking(undefined) }
}

export type TakingProps = { readonly view: JobView; readonly taking: TakeRows }

/** How the taking goes. */
export const Taking = ({ view, taking: { state, asking, bring, leave } }: TakingProps) => (
  <>
    {state.kind === 'reading' ? <Progress label={labelOf('import.reading')} /> : null}
    {state.kind === 'refused' ? (
      <div role="alert">
        <Lines className="give-weather-problems" lines={state.lines} />
      </div>
    ) : null}
    {state.kind === 'read' && state.lines.length > 0 ? (
      <div role="status">
        <Lines className="give-weather-say" lines={state.lines} />
      </div>
    ) : null}
    {asking ? (
      <TableDialog
        view={view}
        file={asking.file.name}
        table={asking.table}
        problems={asking.problems}
        reading={state.kind === 'reading'}
        onRead={(said) => void bring(asking.file, hintsOf(said, asking.table.zoned))}
        onClose={leave}
      />
    ) : null}
  </>
)

/** Lines that are shown of a file that does not read. */
const mostLines = 12

type LinesProps = { readonly className: string; readonly lines: readonly string[] }

const Lines = ({ className, lines }: LinesProps) => (
  <ul className={className}>
    {lines.slice(0, mostLines).map((line) => (
      <li key={line}>{line}</li>
    ))}
  </ul>
)
