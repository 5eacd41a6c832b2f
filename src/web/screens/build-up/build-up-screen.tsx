/** Build-up: what goes on what, as a section; layers and product sheets to change. */
import { type BandScale, bandsOf, bondLine, type Stack, stacksOf } from '#papers'
import { labelOf } from '#words'
import { useKeptChoice } from '../../device/kept-choice.ts'
import { Collection } from '../../fields/collection.tsx'
import { itemsOf } from '../../fields/items.ts'
import type { JobView } from '../../job/job-view.ts'
import { ChoiceField, Ghost, Part, Progress, ShapesSvg, Sheet, Switch2 } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import { BondFaults } from './bond-faults.tsx'
import { bondFound, marksOf } from './bond-found.ts'
import { ProductSheets } from './product-sheets.tsx'
import { Sanding } from './sanding.tsx'
import { SectionDrawing } from './section-drawing.tsx'
import { Shortcuts } from './shortcuts.tsx'
import { stackCost } from './stack-cost.ts'
import { stackNotes } from './stack-notes.ts'
import { Suggestions } from './suggestions.tsx'

export const BuildUpScreen = ({ view, rest, href, go, head, block }: ScreenProps) => {
  const { plan, words } = view
  const [scale, setScale] = useKeptChoice<BandScale>('section', ['readable', 'true'])
  const stacks = plan ? stacksOf(plan) : []
  const stack = stacks.find(({ zones }) => zones.some(({ id }) => id === rest)) ?? stacks[0]
  const found =
    plan && stack
      ? bondFound(
          plan,
          stack.zones.map(({ id }) => id),
        )
      : []
  return (
    <Sheet head={head} block={block} title={titleOf(view, stack)}>
      {plan && stack ? (
        <Part
          title={labelOf('room.build-up')}
          aside={nameOf(stack)}
          action={
            <Switch2<BandScale>
              label={labelOf('buildUp.scale')}
              choices={[
                { value: 'readable', label: labelOf('buildUp.readable') },
                { value: 'true', label: labelOf('buildUp.trueScale') },
              ]}
              value={scale}
              onChange={setScale}
            />
          }
          notes={
            <>
              <Shortcuts stack={stack} words={words} />
              {sheetNotes(view, stackNotes(stack, plan))}
            </>
          }
        >
          {stacks.length > 1 ? (
            <ChoiceField
              label={labelOf('buildUp.zones')}
              as="list"
              value={stack.zones[0]?.id ?? ''}
              choices={stacks.map((one) => ({ value: one.zones[0]?.id ?? '', label: nameOf(one) }))}
              onChange={(zone) => go(href(`build-up/${zone}`))}
            />
          ) : null}
          <SectionDrawing stack={stack} view={view} scale={scale} marks={marksOf(found, stack)} />
          <Key stack={stack} />
          <BondFaults view={view} found={found} />
          <Sanding stack={stack} view={view} />
          <Suggestions view={view} zones={stack.zones.map(({ id }) => id)} />
        </Part>
      ) : (
        <Part label={labelOf('room.build-up')}>
          {plan ? (
            <Ghost kind="section">{words.sentence('buildup.none')}</Ghost>
          ) : (
            <Progress label={labelOf('frame.planning')} />
          )}
        </Part>
      )}
      <Part title={labelOf('buildUp.layers')}>
        <Collection
          view={view}
          place={{ part: 'work', section: 'layers' }}
          keys={['name', 'sheet', 'coats', 'dryFilm', 'method', 'sandBefore', 'sandBetween', 'zones']}
          fresh={freshLayer(view)}
          add={labelOf('buildUp.addLayer')}
          aside={({ cells }) => sheetName(view, cells.sheet)}
        />
      </Part>
      <Part title={labelOf('buildUp.sheets')}>
        <ProductSheets view={view} />
      </Part>
    </Sheet>
  )
}

/** The lines between layers that this build-up uses, nothing else. */
const Key = ({ stack }: { readonly stack: Stack }) => {
  const bands = bandsOf(stack).bands.filter(({ id }) => id.startsWith('new:'))
  const used = (['keyed', 'same coat', 'not tested'] as const).filter((bond) =>
    bands.some((band) => band.below === bond || (band.coatLines.length > 0 && band.between === bond)),
  )
  return (
    <ul className="build-up-key">
      {used.map((bond) => (
        <li key={bond}>
          <ShapesSvg
            drawing={[bondLine(bond, { from: 0, to: 8, y: 1 })]}
            width={8}
            height={2}
            label={labelOf(`paperBond.${bond}`)}
          />
          <span aria-hidden="true">{labelOf(`paperBond.${bond}`)}</span>
        </li>
      ))}
    </ul>
  )
}

const nameOf = ({ zones }: Stack): string => zones.map(({ name }) => name).join(', ')

function titleOf({ plan, words }: JobView, stack: Stack | undefined): string {
  if (!plan || !stack) return labelOf('room.build-up')
  const costCoins = stackCost(stack, plan)
  return words.sentence('buildup.title', {
    name: stack.zones[0]?.name ?? '',
    more: stack.zones.length - 1,
    layers: stack.layers.length,
    coats: stack.layers.reduce((sum, { coats }) => sum + coats, 0),
    mixedL: stack.layers.reduce((sum, { mixedM3 }) => sum + mixedM3.value, 0) * 1000,
    isPriced: costCoins !== undefined,
    costCoins: costCoins ?? 0,
  })
}

const sheetName = (view: JobView, id: unknown): string => {
  const cells = itemsOf(view, { part: 'work', section: 'sheets' }).find((item) => item.id === id)?.cells
  return String(cells?.name ?? id ?? '')
}

const freshLayer = (view: JobView) => ({
  name: labelOf('buildUp.newLayer'),
  sheet: itemsOf(view, { part: 'work', section: 'sheets' })[0]?.id ?? '',
  zones: itemsOf(view, { part: 'work', section: 'zones' })[0]?.id ?? '',
  coats: '1',
  method: 'roller',
})
