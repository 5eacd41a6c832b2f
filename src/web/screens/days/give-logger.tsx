/** What a logger under the shelter told of it, and the way to give its file. */
import { labelOf } from '#words'
import { cellOf, type JobView } from '../../job/job-view.ts'
import { Part } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { FileButton } from '../file-button.tsx'
import { DropFiles } from '../jobs/drop-files.tsx'
import { Taking, useTakeRows } from './take-rows.tsx'

const codes = /^climate\.(shelter|logger|heat|floor)/

export const GiveLogger = ({ view, plan }: { readonly view: JobView; readonly plan: ShownPlan }) => {
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
        {plan.conditions.notes
          .filter(({ code }) => codes.test(code))
          .map(({ code, data }) => (
            <p key={code} className="give-weather-say">
              {words.sentence(code, data)}
            </p>
          ))}
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
