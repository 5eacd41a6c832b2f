/** Open: everything that is assumed, missing or wrong, with the way to put it right. */
import { noteText } from '#papers'
import { labelOf, problemText, sectionIn } from '#words'
import { itemsOf, nameOf } from '../../fields/items.ts'
import type { JobView } from '../../job/job-view.ts'
import { NoteList, Part, Progress, Sheet } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { MoveMost } from './move-most.tsx'

const kinds = ['missing', 'fault', 'assumed', 'notice', 'uncovered'] as const

export const OpenScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words, problems } = view
  const notes = plan?.notes ?? []
  return (
    <Sheet
      head={head}
      block={block}
      title={
        plan
          ? words.sentence('open.title', {
              assumed: notes.filter(({ severity }) => severity === 'assumed').length,
              missing: notes.filter(({ severity }) => severity === 'missing').length,
            })
          : labelOf('room.open')
      }
      say={words.sentence('open.say')}
    >
      {problems.length === 0 ? null : (
        <Part title={labelOf('open.wrong')}>
          <NoteList
            notes={problems.map((problem, at) => ({
              kind: 'missing',
              mark: at + 1,
              text: problemAt(view, problem),
            }))}
          />
        </Part>
      )}
      {plan ? <MoveMost view={view} /> : null}
      {plan ? null : (
        <Part>
          <Progress label={labelOf('frame.planning')} />
        </Part>
      )}
      {kinds.map((kind) => {
        const found = notes.filter(({ severity }) => severity === kind)
        return found.length === 0 ? null : (
          <Part key={kind} title={labelOf(`open.${kind}`)}>
            <NoteList
              notes={found.map((note, at) => ({
                kind: kind === 'missing' ? 'missing' : 'note',
                mark: at + 1,
                text: plan ? noteText(plan, note, words) : '',
              }))}
            />
          </Part>
        )
      })}
    </Sheet>
  )
}

/** The sentence, with the item and the section it is about. */
function problemAt(view: JobView, problem: JobView['problems'][number]): string {
  const [, part = '', name = '', id = ''] = problem.pointer.split('/')
  const items = part === 'work' || part === 'money' ? itemsOf(view, { part, section: name }) : []
  const item = items.find((one) => one.id === id)
  const section = labelOf(`section.${sectionIn(problem.pointer)}`)
  const place = item ? `${nameOf(item)}, ${section}` : section
  return `${problemText(view.words, problem)} (${place})`
}
