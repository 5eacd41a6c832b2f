/** The mishap as an entry of the log, and how the plan moved because of it. */
import { useState } from 'react'
import { type MishapId, mishaps } from '#catalogue'
import { describeStep } from '#plan'
import { labelOf } from '#words'
import { howItMoved } from '../../job/how-it-moved.ts'
import type { JobView } from '../../job/job-view.ts'
import { tellLog } from '../../job/tell-log.ts'
import {
  Button,
  type Choice,
  ChoiceField,
  LinkButton,
  Part,
  Progress,
  QuantityField,
  TextField,
} from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { MovedPlan } from '../moved-plan.tsx'
import { personName } from '../today/who-of.ts'
import { brokenSteps } from './broken-steps.ts'
import { entryCells, type Film, filmsOf } from './mishap-data.ts'

export type WriteInLogProps = {
  readonly id: MishapId
  readonly view: JobView
  readonly go: (href: string) => void
  /** Address of a room of this job; without it no link leads there. */
  readonly href: ((room: string) => string) | undefined
}

export const WriteInLog = ({ id, view, go, href }: WriteInLogProps) => {
  // The plan as it was when the entry was written: later ones are held against it.
  const [written, setWritten] = useState<{ readonly was: ShownPlan | undefined } | undefined>(undefined)
  if (written === undefined)
    return <Choose id={id} view={view} onWritten={() => setWritten({ was: view.plan })} />
  const { was } = written
  const filmless = filmsOf(id).length === 0
  return (
    <Part title={labelOf('whatNow.written')} label={labelOf('whatNow.written')}>
      <div className="what-now-stack" role="status">
        {was === undefined || view.plan === undefined || filmless ? (
          <p>{view.words.sentence('whatnow.writtenOnly')}</p>
        ) : view.planning || view.plan === was ? (
          <Progress label={labelOf('whatNow.planning')} />
        ) : (
          <MovedPlan
            moved={howItMoved(was, view.plan)}
            words={view.words}
            timeZone={view.timeZone}
            change={view.change.number}
          />
        )}
      </div>
      {href === undefined ? null : (
        <LinkButton
          className="what-now-link"
          href={href('days')}
          onClick={(event) => {
            event.preventDefault()
            go(href('days'))
          }}
        >
          {labelOf('whatNow.toDays')}
        </LinkButton>
      )}
    </Part>
  )
}

type ChooseProps = { readonly id: MishapId; readonly view: JobView; readonly onWritten: () => void }

const Choose = ({ id, view, onWritten }: ChooseProps) => {
  const films = filmsOf(id)
  const { plan, log, nowMs, words } = view
  const [known] = useState(() =>
    plan === undefined || films.length === 0 ? [] : brokenSteps({ plan, log, nowMs }),
  )
  const [step, setStep] = useState(known[0] ?? '')
  const [film, setFilm] = useState<Film | ''>(films[0] ?? '')
  const [share, setShare] = useState('')
  const [by, setBy] = useState<string>()
  const who = by ?? plannedOn(view, step)
  const write = (): void => {
    const cells = entryCells({ id, step: step || undefined, film: film || undefined, share })
    const named = who.trim() === '' ? cells : { ...cells, by: who.trim() }
    tellLog(view, { cells: named, nowMs: Date.now() })
    onWritten()
  }
  return (
    <Part title={labelOf('whatNow.log')}>
      <div className="what-now-stack">
        {films.length === 0 ? null : known.length === 0 ? (
          <p>{words.sentence('whatnow.noCoat')}</p>
        ) : (
          <>
            <ChoiceField
              as="list"
              label={labelOf('whatNow.coat')}
              choices={known.map((one) => ({ value: one, label: nameOf(plan, one, words) }))}
              value={step}
              onChange={setStep}
            />
            <ChoiceField<Film>
              label={labelOf('whatNow.film')}
              choices={films.map(filmChoice)}
              value={film}
              onChange={setFilm}
              help={film === '' ? undefined : words.sentence(filmCodes[film], { ...mishaps[id].cells })}
            />
            {film === 'stands' ? (
              <QuantityField
                label={labelOf('whatNow.share')}
                value={share}
                onCommit={setShare}
                placeholder={mishaps[id].cells.spotShare}
                help={labelOf('whatNow.shareHelp')}
              />
            ) : null}
          </>
        )}
        <TextField label={labelOf('cell.log.by')} value={who} onCommit={setBy} onType={setBy} />
        <Button big next disabled={view.readOnly} onClick={write}>
          {labelOf('whatNow.write')}
        </Button>
      </div>
    </Part>
  )
}

const filmCodes: Readonly<Record<Film, string>> = {
  stands: 'whatnow.filmStands',
  'wiped off': 'whatnow.filmWiped',
  'sanded off': 'whatnow.filmSanded',
}

const filmLabels: Readonly<Record<Film, string>> = {
  stands: 'whatNow.stands',
  'wiped off': 'whatNow.wiped',
  'sanded off': 'whatNow.sanded',
}

const filmChoice = (film: Film): Choice<Film> => ({ value: film, label: labelOf(filmLabels[film]) })

/** Who the plan has on the step; the whole crew may have been there, so the box is there to be changed. */
export function plannedOn(view: Pick<JobView, 'plan' | 'raw'>, step: string): string {
  const pieces = view.plan?.days.placed.find((one) => one.step === step)?.pieces ?? []
  const people = [...new Set(pieces.flatMap((piece) => piece.people))]
  return people.map((id) => personName(view, id)).join(', ')
}

function nameOf(plan: ShownPlan | undefined, step: string, words: JobView['words']): string {
  if (plan === undefined) return step
  const { code, data } = describeStep(plan, step)
  return words.sentence(code, data)
}
