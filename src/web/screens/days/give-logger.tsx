/** The way to give the file of a logger that hung under the shelter. */
import { labelOf } from '#words'
import { cellOf, type JobView } from '../../job/job-view.ts'
import { Part } from '../../parts/index.ts'
import { FileButton } from '../file-button.tsx'
import { DropFiles } from '../jobs/drop-files.tsx'
import { Taking, useTakeRows } from './take-rows.tsx'

export const GiveLogger = ({ view }: { readonly view: JobView }) => {
  const { words, readOnly } = view
  const taking = useTakeRows(view, view.giveLogger)
  const file = cellOf(view, { part: 'work', section: 'weather', key: 'logger' })
  const isOpen = cellOf(view, { part: 'work', section: 'place', key: 'shelter' }) === 'open'
  // In the open its air is that of the weather, and there is nothing to fit.
  if (isOpen && file === '') return null
  return (
    <DropFiles
      hint={labelOf('daysScreen.dropLogger')}
      onFiles={([given]) => given && !readOnly && void taking.bring(given)}
    >
      <Part title={labelOf('daysScreen.logger')}>
        {file === '' ? null : <p>{words.sentence('daysscreen.loggerIs', { name: file })}</p>}
        {file === '' ? <p className="give-weather-say">{words.sentence('daysscreen.loggerSay')}</p> : null}
        <FileButton
          label={labelOf('daysScreen.giveLogger')}
          accept=".csv,.txt"
          onFiles={([given]) => {
            if (given) void taking.bring(given)
          }}
          disabled={readOnly || taking.state.kind === 'reading'}
        />
        <Taking view={view} taking={taking} />
      </Part>
    </DropFiles>
  )
}
