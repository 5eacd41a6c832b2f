/** Open: everything that is assumed, missing or wrong, with the way to put it right. */
import { noteText } from '#papers'
import { labelOf, problemText, roomOfSection, sectionIn } from '#words'
import { cellAddress } from '../../fields/asked-cell.ts'
import { sectionAt } from '../../fields/field-of.ts'
import { itemsOf, nameOf, type RawItem } from '../../fields/items.ts'
import { cellOfProblem, type JobView } from '../../job/job-view.ts'
import { NoteList, Part, Progress, Sheet } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { MoveMost } from './move-most.tsx'

const kinds = ['missing', 'fault', 'assumed', 'notice', 'uncovered'] as const

export const OpenScreen = ({ view, head, block, go }: ScreenProps) => {
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
              action: <ToBox view={view} problem={problem} go={go} />,
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

type ToBoxProps = Pick<ScreenProps, 'view' | 'go'> & { readonly problem: JobView['problems'][number] }

/** The way to the box in which it is put right. */
const ToBox = ({ view, go, problem }: ToBoxProps) => {
  const place = cellOfProblem(problem)
  const section = place && sectionAt(place)
  const room = place && roomOfSection(place.section)
  if (!place || !section?.fields[place.key] || room === undefined) return null
  const href = `/job/${view.id}/${room}${cellAddress(place)}`
  return (
    <a
      className="open-to-box"
      href={href}
      onClick={(event) => {
        event.preventDefault()
        go(href)
      }}
    >
      {labelOf('open.toBox')}
    </a>
  )
}

/** The sentence, with the item and the section it is about. */
function problemAt(view: JobView, problem: JobView['problems'][number]): string {
  const [, part = '', name = '', id = ''] = problem.pointer.split('/')
  const items = part === 'work' || part === 'money' ? itemsOf(view, { part, section: name }) : []
  const at = items.findIndex((one) => one.id === id)
  const item = items[at]
  const section = labelOf(`section.${sectionIn(problem.pointer)}`)
  const place = item ? `${called(item, at)}, ${section}` : section
  return `${problemText(view.words, problem)} (${place})`
}

/** What has no name is counted: its id says nothing to anybody where the program made it. */
const called = (item: RawItem, at: number): string =>
  madeId.test(item.id) && (item.cells.name ?? '') === ''
    ? `${labelOf('open.number')} ${at + 1}`
    : nameOf(item)

const madeId = /^[a-z2-9]{12}$/
