/** A job from a file: picked by a button or dropped on the list; what is wrong with it is said with its lines. */

import { useState } from 'react'
import { createWords, labelOf, problemLine } from '#words'
import { createJob } from '../../device/create-job.ts'
import type { Device } from '../../device/device.ts'
import { Banner, Button, Progress } from '../../parts/index.ts'
import { readJobInWorker } from '../../worker/import-client.ts'
import type { JobRead } from '../../worker/read-job-files.ts'
import { FileButton } from '../file-button.tsx'

const words = createWords({ locale: 'en-GB', system: 'metric' })
/** Lines that are shown; the rest is counted. */
const mostLines = 20

type State =
  | { readonly kind: 'still' | 'reading' }
  | { readonly kind: 'refused'; readonly lines: readonly string[] }
  | { readonly kind: 'asking'; readonly read: Extract<JobRead, { readonly ok: true }>; readonly file: string }

export type JobImport = {
  readonly state: State
  readonly bring: (files: readonly File[]) => void
  /** Takes the job although its weather was not given. */
  readonly without: () => void
}

export function useJobImport(device: Device, go: (href: string) => void): JobImport {
  const [state, setState] = useState<State>({ kind: 'still' })
  const take = async ({ raw, weathers }: Extract<JobRead, { readonly ok: true }>): Promise<void> => {
    try {
      const id = await createJob(device, { raw, weathers })
      go(`/job/${id}/today`)
    } catch (error) {
      const code = error instanceof Error ? error.message : 'web.deviceFault'
      setState({ kind: 'refused', lines: [words.sentence(code)] })
    }
  }
  const bring = async (files: readonly File[]): Promise<void> => {
    if (files.length === 0) return
    setState({ kind: 'reading' })
    const read = await readJobInWorker(files)
    if (!read.ok) {
      setState({
        kind: 'refused',
        lines: read.problems.map((problem) => problemLine(words, problem.file, problem)),
      })
    } else if (read.wantsWeather !== undefined) {
      setState({ kind: 'asking', read, file: read.wantsWeather })
    } else await take(read)
  }
  return {
    state,
    bring: (files) => void bring(files),
    without: () => {
      if (state.kind === 'asking') void take(state.read)
    },
  }
}

export const ImportJob = ({ state, bring, without }: JobImport) => {
  return (
    <div className="jobs-import">
      <p className="jobs-import-say">{words.sentence('import.say')}</p>
      <FileButton
        label={labelOf('import.pick')}
        accept=".yaml,.yml,.json,.csv,.epw,.txt"
        multiple
        onFiles={bring}
        disabled={state.kind === 'reading'}
      />
      {state.kind === 'reading' ? <Progress label={labelOf('import.reading')} /> : null}
      {state.kind === 'refused' ? <Refused lines={state.lines} /> : null}
      {state.kind === 'asking' ? (
        <Banner action={<Button onClick={without}>{labelOf('import.without')}</Button>}>
          {words.sentence('import.wantsWeather', { file: state.file })}
        </Banner>
      ) : null}
    </div>
  )
}

const Refused = ({ lines }: { readonly lines: readonly string[] }) => (
  <div role="alert">
    <p>{words.sentence('import.refused', { count: lines.length })}</p>
    <ul className="jobs-problems">
      {lines.slice(0, mostLines).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
    {lines.length > mostLines ? (
      <p>{words.sentence('import.more', { count: lines.length - mostLines })}</p>
    ) : null}
  </div>
)
