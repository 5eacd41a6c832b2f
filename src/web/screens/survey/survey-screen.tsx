/** Survey: what was found, what comes off, and what is left alone. */
import { workFields } from '#job'
import { labelOf } from '#words'
import { Collection } from '../../fields/collection.tsx'
import { itemsOf, nameOf, type RawItem } from '../../fields/items.ts'
import { notesOf } from '../../job/notes-of.ts'
import { Part, PartBlock, Sheet } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { SheetCautions } from '../sheet-cautions.tsx'
import { sheetNotes } from '../sheet-notes.tsx'

const findings = { part: 'work', section: 'findings' } as const
const fittings = { part: 'work', section: 'fittings' } as const

const findingKind = workFields.findings.fields.kind.choices[0]

/** Cautions of opening, grinding and cutting into a boat. */
const kinds = ['survey', 'repair', 'off', 'fuel', 'guard']

export const SurveyScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words } = view
  const zoneName = (id: unknown): string =>
    plan?.surfaces.zones.find((zone) => zone.id === id)?.name ?? String(id ?? '')
  const firstZone = itemsOf(view, { part: 'work', section: 'zones' })[0]?.id ?? ''
  return (
    <Sheet head={head} block={block} title={titleOf(view)} say={sayOf(view)}>
      <Part
        title={labelOf('survey.findings')}
        notes={
          plan ? (
            <>
              <SheetCautions view={view} kinds={kinds} />
              {sheetNotes(view, notesOf(plan, /^(repairs|fittings|quantities\.repairs)/))}
            </>
          ) : undefined
        }
      >
        <Collection
          view={view}
          place={findings}
          keys={['name', 'zone', 'kind', 'count', 'place', 'hours', 'sheet', 'volume']}
          fresh={{ name: labelOf('survey.newFinding'), kind: findingKind, zone: firstZone, hours: '1 h' }}
          add={labelOf('survey.addFinding')}
          aside={({ id, cells }) => {
            const repair = plan?.repairs.repairs.find(({ finding }) => finding === id)
            return [zoneName(cells.zone), repair ? words.figure('hours', repair.hours) : '']
              .filter((text) => text !== '')
              .join(', ')
          }}
        />
      </Part>
      <Part title={labelOf('survey.fittings')}>
        <Collection
          view={view}
          place={fittings}
          keys={['name', 'zone', 'kind', 'count', 'plan', 'hoursOff', 'hoursOn', 'reach', 'bag']}
          fresh={{ name: labelOf('survey.newFitting'), kind: 'fitting', plan: 'refit', zone: firstZone }}
          add={labelOf('survey.addFitting')}
          aside={({ id }) => {
            const fitting = plan?.repairs.fittings.find((one) => one.fitting === id)
            return fitting ? labelOf(`fittingPlan.${fitting.leaveAlone ? 'leaveAlone' : fitting.plan}`) : ''
          }}
        />
      </Part>
      {plan ? (
        <Part label={labelOf('survey.leaveAlone')}>
          <PartBlock title={labelOf('survey.leaveAlone')}>
            <p>{leftAlone(view)}</p>
          </PartBlock>
        </Part>
      ) : null}
    </Sheet>
  )
}

/** Written down, but with something in them that keeps them out of the plan. */
function unread(view: ScreenProps['view']): readonly RawItem[] {
  const planned = new Set(view.plan?.repairs.repairs.map(({ finding }) => finding))
  return itemsOf(view, findings).filter(({ id }) => !planned.has(id))
}

function titleOf(view: ScreenProps['view']): string {
  const { plan, words } = view
  if (!plan) return labelOf('room.survey')
  const { repairs } = plan.repairs
  const left = unread(view).length
  if (repairs.length === 0 && left > 0) return words.sentence('survey.titleUnread', { count: left })
  return words.sentence('survey.title', {
    count: repairs.length,
    hours: repairs.reduce((sum, repair) => sum + repair.hours, 0),
  })
}

function sayOf(view: ScreenProps['view']): string | undefined {
  const said = [unreadSay(view), offSay(view)].filter((text) => text !== undefined)
  return said.length === 0 ? undefined : said.join(' ')
}

function unreadSay(view: ScreenProps['view']): string | undefined {
  const left = view.plan ? unread(view) : []
  const names = left.map(nameOf).join(', ')
  return left.length === 0 ? undefined : view.words.sentence('survey.unread', { count: left.length, names })
}

function offSay({ plan, words }: ScreenProps['view']): string | undefined {
  const off = plan?.repairs.fittings.filter((one) => one.plan !== 'leave' && !one.leaveAlone) ?? []
  const hours = off.reduce((sum, one) => sum + one.count * (one.hoursOff.value + one.hoursOn.value), 0)
  return off.length === 0
    ? undefined
    : words.sentence('survey.off', { count: off.reduce((sum, one) => sum + one.count, 0), hours })
}

function leftAlone({ plan, words }: ScreenProps['view']): string {
  const names = plan?.repairs.fittings.filter(({ leaveAlone }) => leaveAlone).map(({ name }) => name) ?? []
  return names.length === 0
    ? words.sentence('survey.nothingLeft')
    : words.sentence('survey.left', { names: names.join(', ') })
}
