/** Boat: the hull in lines, its zones and sizes; an edit moves areas and litres at once. */
import { lazy, Suspense, useState } from 'react'
import { labelOf } from '#words'
import { useKeptChoice } from '../../device/kept-choice.ts'
import { Cells, Fold } from '../../fields/cells.tsx'
import { Collection } from '../../fields/collection.tsx'
import { WayFigure } from '../../figures/way-figure.tsx'
import { notesOf } from '../../job/notes-of.ts'
import {
  Ghost,
  Ledger,
  LinkButton,
  Part,
  PartBlock,
  Progress,
  Sheet,
  Switch2,
  useWidth,
} from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import { DeckPart } from './deck/deck-part.tsx'
import { FindingTable } from './finding-table.tsx'
import { LinesPlan } from './lines-plan.tsx'
import { MeasuredPart } from './measured-part.tsx'
import { PadTable } from './pad-table.tsx'
import { PaintCell } from './paint-cell.tsx'
import { ScanPart } from './scan/scan-part.tsx'
import { type Finish, paintOf } from './solid/picture.ts'
import { StandingPart, standingNotes } from './standing-part.tsx'
import { ZoneTable } from './zone-table.tsx'

const boat = { part: 'work', section: 'boat' } as const
const zones = { part: 'work', section: 'zones' } as const

const chief = ['lengthOverall', 'beam', 'freeboardStem', 'freeboardMid', 'freeboardStern', 'draft']
const more = [
  'kind',
  'bilge',
  'lengthWaterline',
  'beamTransom',
  'deadrise',
  'deadriseTransom',
  'chineBeam',
  'chineHeight',
  'flare',
  'stemRake',
  'transomRake',
  'laminate',
  'fuel',
  'tankPlace',
]

const SolidView = lazy(async () => ({ default: (await import('./solid/solid-view.tsx')).SolidView }))

type Look = 'lines' | 'solid'

export const BoatScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words } = view
  const [chosen, setChosen] = useState<string>()
  const [look, setLook] = useKeptChoice<Look>('boat', ['lines', 'solid'])
  const [finish, setFinish] = useKeptChoice<Finish>('boat-finish', ['drawn', 'painted'])
  const { ref, width } = useWidth<HTMLDivElement>()
  const outline = plan?.surfaces.outline
  const notes = plan
    ? notesOf(plan, /^(boat|surfaces)\./).filter(({ code }) => !standingNotes.test(code))
    : []
  return (
    <Sheet head={head} block={block} title={titleOf(view)} say={sayOf(view)}>
      <Part
        title={labelOf('room.boat')}
        action={plan ? <LinkButton href="#deck-plan">{labelOf('deckplan.plan')}</LinkButton> : undefined}
        aside={labelOf(`boatKind.${String(view.raw.work.boat?.kind ?? 'open powerboat')}`)}
        notes={
          <>
            <PartBlock title={labelOf('heading.zones')}>
              {plan ? (
                <ZoneTable view={view} plan={plan} chosen={chosen} onChoose={setChosen} />
              ) : (
                <Progress label={labelOf('frame.planning')} />
              )}
            </PartBlock>
            {plan ? <PadTable view={view} plan={plan} chosen={chosen} onChoose={setChosen} /> : null}
            {plan && plan.repairs.repairs.length > 0 ? (
              <PartBlock title={labelOf('survey.findings')}>
                <FindingTable view={view} plan={plan} chosen={chosen} onChoose={setChosen} />
              </PartBlock>
            ) : null}
            {sheetNotes(view, notes)}
            <Rules view={view} />
          </>
        }
      >
        <Looks look={look} onLook={setLook} finish={finish} onFinish={setFinish} />
        <div ref={ref}>
          {plan && outline && look === 'solid' ? (
            <Suspense fallback={<Progress label={labelOf('frame.planning')} />}>
              <SolidView view={view} plan={plan} finish={finish} chosen={chosen} onChoose={setChosen} />
            </Suspense>
          ) : plan && outline && width > 0 ? (
            <LinesPlan
              plan={plan}
              outline={outline}
              words={words}
              width={width}
              paint={finish === 'painted' ? (zone) => paintOf(plan, zone) : undefined}
              chosen={chosen}
              onChoose={setChosen}
            />
          ) : plan ? (
            <Ghost kind="hull">{words.sentence('surfaces.noHull')}</Ghost>
          ) : null}
        </div>
        {plan && finish === 'painted' ? <PaintCell view={view} plan={plan} zone={chosen} /> : null}
        <PartBlock title={labelOf('boat.sizes')} level={3}>
          <Cells view={view} place={boat} keys={chief} helped />
          <Fold title={labelOf('boat.moreSizes')}>
            <Cells view={view} place={boat} keys={more} helped />
          </Fold>
        </PartBlock>
        <PartBlock title={labelOf('boat.editZones')} level={3}>
          <Collection
            view={view}
            place={zones}
            keys={['name', 'kind', 'side', 'area', 'existing', 'solventRub', 'texture', 'behind']}
            fresh={{ name: labelOf('boat.newZone'), kind: 'foredeck', existing: 'unknown' }}
            add={labelOf('boat.addZone')}
            open={chosen}
            onOpen={setChosen}
            aside={({ cells }) => String(cells.kind ?? '')}
          />
        </PartBlock>
      </Part>
      {plan ? <DeckPart view={view} plan={plan} chosen={chosen} onChoose={setChosen} /> : null}
      <ScanPart view={view} />
      <MeasuredPart view={view} />
      <StandingPart view={view} />
    </Sheet>
  )
}

type LooksProps = {
  readonly look: Look
  readonly onLook: (look: Look) => void
  readonly finish: Finish
  readonly onFinish: (finish: Finish) => void
}

const Looks = ({ look, onLook, finish, onFinish }: LooksProps) => (
  <div className="boat-looks">
    <Switch2<Look>
      label={labelOf('boat.look')}
      choices={[
        { value: 'lines', label: labelOf('boat.lines') },
        { value: 'solid', label: labelOf('boat.solid') },
      ]}
      value={look}
      onChange={onLook}
    />
    <Switch2<Finish>
      label={labelOf('boat.finish')}
      choices={[
        { value: 'drawn', label: labelOf('boat.drawn') },
        { value: 'painted', label: labelOf('boat.painted') },
      ]}
      value={finish}
      onChange={onFinish}
    />
  </div>
)

/** What rules of thumb say, beside what was worked out. */
const Rules = ({ view, view: { plan, words } }: Pick<ScreenProps, 'view'>) =>
  plan && plan.surfaces.rules.length > 0 ? (
    <Fold title={labelOf('heading.rules')}>
      <Ledger
        caption={labelOf('heading.rules')}
        columns={[
          { key: 'rule', label: labelOf('boat.rule'), phone: 'first' },
          { key: 'area', label: labelOf('boat.ruleArea'), align: 'right', phone: 'side' },
          { key: 'worked', label: labelOf('boat.workedArea'), align: 'right', phone: 'second' },
        ]}
        rows={plan.surfaces.rules.map((rule) => ({
          id: rule.id,
          cells: {
            rule: labelOf(`rule.${rule.id}`),
            area: (
              <WayFigure
                view={view}
                of={{ kind: 'rule area', rule: rule.id }}
                text={words.figure('areaM2', rule.area)}
                certainty="typical"
                label={labelOf(`rule.${rule.id}`)}
              />
            ),
            worked: words.figure('areaM2', rule.workedArea),
          },
        }))}
      />
    </Fold>
  ) : null

function titleOf({ plan, words }: ScreenProps['view']): string {
  if (!plan) return labelOf('room.boat')
  const painted = new Set(plan.buildUps.layers.map(({ zone }) => zone))
  const all = [...plan.surfaces.zones, ...plan.marks.zones].filter(({ id }) => painted.has(id))
  return words.sentence('boat.title', {
    areaM2: all.reduce((sum, zone) => sum + zone.areaM2, 0),
    zones: all.length,
    mixedL: plan.quantities.sheets.reduce((sum, sheet) => sum + sheet.mixedM3, 0) * 1000,
  })
}

function sayOf({ plan, words }: ScreenProps['view']): string | undefined {
  const unsure = plan?.surfaces.zones.filter(({ certainty }) => certainty === 'assumed').length ?? 0
  return unsure > 0 ? words.sentence('boat.unsure', { count: unsure }) : undefined
}
