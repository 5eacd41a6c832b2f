/** Build-ups from the sheets of the job that hold on what these zones are, in figures, each to be taken as it stands. */
import { useEffect, useState } from 'react'
import { noteText, suggestionText } from '#papers'
import type { Suggestions as Found, ToldMiss, ZoneSuggestions } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { takeBuildUp } from '../../job/take-build-up.ts'
import { Button, ChoiceField, PartBlock, Progress } from '../../parts/index.ts'
import './suggestions.css'

/** `zones`: those that are drawn as one build-up. */
export type SuggestionsProps = { readonly view: JobView; readonly zones: readonly string[] }

export const Suggestions = ({ view, zones }: SuggestionsProps) => {
  const [asked, setAsked] = useState(false)
  const [family, setFamily] = useState('')
  const found = useSuggestions(view, { asked, family })
  const groups = found?.groups.filter((group) => group.zones.some((zone) => zones.includes(zone))) ?? []
  return (
    <PartBlock title={labelOf('suggest.title')}>
      {asked ? null : <Button onClick={() => setAsked(true)}>{labelOf('suggest.ask')}</Button>}
      {asked && !found ? <Progress label={labelOf('suggest.looking')} /> : null}
      {found ? (
        <ChoiceField
          label={labelOf('suggest.finish')}
          value={family}
          onChange={setFamily}
          choices={[
            { value: '', label: labelOf('suggest.any') },
            { value: 'two-part polyurethane', label: labelOf('suggest.twoPart') },
            { value: 'one-part', label: labelOf('suggest.onePart') },
          ]}
        />
      ) : null}
      {groups.map((group) => (
        <Group key={group.zones.join()} group={group} view={view} />
      ))}
      {found ? <LeftOut found={found} view={view} /> : null}
    </PartBlock>
  )
}

/** Asked anew when what they rest on has changed; the old ones stay until the new come. */
function useSuggestions(
  { ask, plan, raw }: JobView,
  { asked, family }: { readonly asked: boolean; readonly family: string },
): Found | undefined {
  const [found, setFound] = useState<Found>()
  const [sheets, surfaces, repairs] = [plan?.buildUps.sheets, plan?.surfaces, plan?.repairs]
  const prices = raw.money?.prices
  useEffect(() => {
    if (!asked || !sheets || !surfaces || !repairs) return undefined
    let stale = prices === null
    ask({ kind: 'suggest', ...(family === '' ? {} : { family }) }).then(
      (answer) => {
        if (!stale) setFound(answer)
      },
      () => undefined,
    )
    return () => {
      stale = true
    }
  }, [ask, asked, family, sheets, surfaces, repairs, prices])
  return found
}

type GroupProps = { readonly group: ZoneSuggestions; readonly view: JobView }

const Group = ({ group, view }: GroupProps) => {
  const { plan, words } = view
  if (!plan) return null
  const name = (id: string) =>
    [...plan.surfaces.zones, ...plan.marks.zones].find((zone) => zone.id === id)?.name ?? id
  return (
    <>
      <p className="suggestions-zones">
        {words.sentence('suggest.heading', {
          zones: group.zones.map(name).join(', '),
          areaM2: group.areaM2,
          oldSurface: group.existing,
        })}
      </p>
      <ol className="suggestions">
        {group.suggestions.map((one) => (
          <li key={one.steps.map(({ offer }) => offer.id).join()}>
            <One one={one} group={group} view={view} />
          </li>
        ))}
      </ol>
      {group.none ? <p>{noneText(group, view)}</p> : null}
      {group.none?.miss ? <Miss miss={group.none.miss} view={view} /> : null}
      {group.shortcuts.map((miss) => (
        <div key={stackKey(miss)} className="suggestions-shortcut">
          <p>{words.sentence('suggest.shortcut', { names: namesOf(miss, view) })}</p>
          <Miss miss={miss} view={view} />
        </div>
      ))}
    </>
  )
}

const stackKey = ({ stack }: ToldMiss): string => stack.layers.map(({ id }) => id).join()

const sheetName = ({ plan }: JobView, id: string): string =>
  plan?.buildUps.sheets.find((sheet) => sheet.id === id)?.name ?? id

const namesOf = ({ stack }: ToldMiss, view: JobView): string =>
  stack.layers.map(({ id }) => sheetName(view, id)).join(', ')

function noneText({ none }: ZoneSuggestions, view: JobView): string {
  if (none?.why === 'no finish') return view.words.sentence('suggest.noFinish')
  return none?.miss
    ? view.words.sentence('suggest.noWay', { names: namesOf(none.miss, view) })
    : view.words.sentence('suggest.nothing')
}

const Miss = ({ miss, view }: { readonly miss: ToldMiss; readonly view: JobView }) => (
  <ul className="suggestions-why">
    {miss.notes.map((note) => {
      const text = view.plan ? noteText(view.plan, note, view.words) : ''
      return <li key={text}>{text}</li>
    })}
  </ul>
)

type OneProps = GroupProps & { readonly one: ZoneSuggestions['suggestions'][number] }

const One = ({ one, group, view }: OneProps) => {
  const { plan, words } = view
  if (!plan) return null
  const text = suggestionText(one, { plan, areaM2: group.areaM2, words })
  const take = () =>
    takeBuildUp(view, {
      steps: one.steps,
      zones: group.zones,
      roleOf: (id) => plan.buildUps.sheets.find((sheet) => sheet.id === id)?.role,
      nameOf: (id) => sheetName(view, id),
    })
  return (
    <>
      <p className="suggestions-figures">{text.figures}</p>
      {text.strip ? <p>{text.strip}</p> : null}
      {text.only.map((line) => (
        <p key={line}>
          <b>{line}</b>
        </p>
      ))}
      <ul className="suggestions-layers">
        {text.layers.map((layer) => (
          <li key={layer}>{layer}</li>
        ))}
      </ul>
      {view.readOnly ? null : <Button onClick={take}>{labelOf('suggest.take')}</Button>}
    </>
  )
}

const LeftOut = ({ found, view }: { readonly found: Found; readonly view: JobView }) => (
  <>
    {(['unpriced', 'unspread'] as const).map((which) =>
      found[which].length === 0 ? null : (
        <p key={which} className="suggestions-left">
          {view.words.sentence(`suggest.${which}`, {
            names: found[which].map((id) => sheetName(view, id)).join(', '),
          })}
        </p>
      ),
    )}
  </>
)
