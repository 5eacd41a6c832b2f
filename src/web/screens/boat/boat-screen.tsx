/** Boat: the hull in lines, its zones and sizes; an edit moves areas and litres at once. */
import { useState } from 'react'
import { labelOf } from '#words'
import { Cells, Fold } from '../../fields/cells.tsx'
import { Collection } from '../../fields/collection.tsx'
import { WayFigure } from '../../figures/way-figure.tsx'
import { notesOf } from '../../job/notes-of.ts'
import { Ghost, Ledger, LinkButton, Part, PartBlock, Progress, Sheet, useWidth } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import { DeckPart } from './deck/deck-part.tsx'
import { FindingTable } from './finding-table.tsx'
import { LinesPlan } from './lines-plan.tsx'
import { MeasuredPart } from './measured-part.tsx'
import { PadTable } from './pad-table.tsx'
import { ScanPart } from './scan/scan-part.tsx'
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

export const BoatScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words } = view
  const [chosen, setChosen] = useState<string>()
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
        <div ref={ref}>
          {plan && outline && width > 0 ? (
            <LinesPlan
              plan={plan}
              outline={outline}
              words={words}
              width={width}
              chosen={chosen}
              onChoose={setChosen}
            />
          ) : plan ? (
            <Ghost kind="hull">{words.sentence('surfaces.noHull')}</Ghost>
          ) : null}
        </div>
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
            keys={['name', 'kind', 'side', 'area', 'existing', 'texture']}
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

/** What rules of thumb say, beside what was worked out. */
const Rules = ({ view, view: { plan, words } }: Pick<ScreenProps, 'view'>) =>
  plan && plan.surfaces.rules.length > 0 ? (
    <PartBlock title={labelOf('heading.rules')}>
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
    </PartBlock>
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
