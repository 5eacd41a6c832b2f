/** Money: the estimate by groups, what it is made of, and the change orders. */
import type { RawCells } from '#job'
import { amountText, moneyLineName } from '#papers'
import type { Estimate } from '#plan'
import { labelOf } from '#words'
import { choiceLabel } from '../../fields/cell-field.tsx'
import { Cells, Fold } from '../../fields/cells.tsx'
import { Collection } from '../../fields/collection.tsx'
import { itemsOf, type RawItem } from '../../fields/items.ts'
import { packName } from '../../fields/pack-name.ts'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { notesOf } from '../../job/notes-of.ts'
import { Ghost, Ledger, Part, Sheet } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { sheetNotes } from '../sheet-notes.tsx'
import { PriceHere } from './price-here.tsx'
import { Signed } from './signed.tsx'
import { StartMoney } from './start-money.tsx'

const money = (section: string) => ({ part: 'money', section }) as const
const groups = ['labour', 'materials', 'consumables', 'costs'] as const
const sums = ['margin', 'net', 'tax', 'total', 'deposit'] as const

export const MoneyScreen = ({ view, head, block }: ScreenProps) => {
  const { plan, words, sees, raw } = view
  const estimate = plan?.money
  if (sees === 'work') {
    return (
      <Sheet head={head} block={block} title={labelOf('room.money')}>
        <Part>
          <Ghost kind="table">{words.sentence('money.notShown')}</Ghost>
        </Part>
      </Sheet>
    )
  }
  return (
    <Sheet
      head={head}
      block={block}
      title={
        estimate
          ? words.sentence('money.title', {
              total: words.figure('coins', estimate.totalCoins, { currency: estimate.currency }),
              net: words.figure('coins', estimate.netCoins, { currency: estimate.currency }),
            })
          : labelOf('room.money')
      }
      say={estimate && !estimate.complete ? words.sentence('money.incomplete') : undefined}
    >
      {raw.money === undefined ? (
        <Part>
          <StartMoney view={view} />
        </Part>
      ) : (
        <>
          {estimate && plan ? (
            <Part title={labelOf('heading.money')} notes={sheetNotes(view, spoken(view, plan))}>
              {groups.map((group) => (
                <Group key={group} group={group} view={view} estimate={estimate} />
              ))}
              <Sums view={view} estimate={estimate} />
              <Signed view={view} estimate={estimate} />
            </Part>
          ) : null}
          <Part title={labelOf('money.terms')}>
            <Cells
              view={view}
              place={money('terms')}
              keys={['currency', 'margin', 'tax', 'deposit', 'sundries', 'validDays', 'signed', 'signedOn']}
              helped
            />
          </Part>
          {(['rates', 'prices', 'consumablePrices', 'costs'] as const).map((section) => (
            <Part key={section} title={labelOf(`money.${section}`)}>
              <Fold title={labelOf('money.change')}>
                <Collection
                  view={view}
                  place={money(section)}
                  keys={keys[section]}
                  fresh={freshOf(section, view)}
                  add={labelOf(`money.add.${section}`)}
                  name={(item) => pricedName(view, item)}
                  aside={({ cells }) => String(cells.price ?? cells.hourly ?? cells.amount ?? '')}
                />
              </Fold>
            </Part>
          ))}
        </>
      )}
      <Part title={labelOf('heading.changes')}>
        <Collection
          view={view}
          place={{ part: 'work', section: 'changes' }}
          keys={['name', 'found', 'zone', 'hours', 'sheet', 'volume', 'date']}
          fresh={{ name: labelOf('money.newChange'), hours: '1 h' }}
          add={labelOf('money.addChange')}
          aside={({ id }) => {
            const change = estimate?.changes.find((one) => one.id === id)
            return change && estimate
              ? words.figure('coins', change.totalCoins, { currency: estimate.currency })
              : ''
          }}
        />
      </Part>
    </Sheet>
  )
}

/** A price that is missing has its box in the line: no note a line. */
const spoken = ({ readOnly }: JobView, plan: Parameters<typeof notesOf>[0]) =>
  notesOf(plan, /^money\./).filter(({ code }) => readOnly || code !== 'money.priceMissing')

const keys = {
  rates: ['role', 'hourly'],
  prices: ['pack', 'price'],
  consumablePrices: ['consumable', 'price'],
  costs: ['name', 'amount'],
} as const

/** Without a price: one that nobody gave would count as given. */
const freshOf = (section: keyof typeof keys, { raw, plan }: JobView): RawCells => {
  if (section === 'rates') return { role: 'helper' }
  if (section === 'costs') return { name: labelOf('money.newCost') }
  if (section === 'consumablePrices') return { consumable: plan?.stores.consumables[0]?.id ?? '' }
  return { pack: Object.keys(raw.work.packs ?? {})[0] ?? '' }
}

type GroupProps = {
  readonly group: (typeof groups)[number]
  readonly view: JobView
  readonly estimate: Estimate
}

const Group = ({ group, view, estimate }: GroupProps) => {
  const { words, plan } = view
  const lines = estimate.lines.filter((line) => line.group === group)
  if (lines.length === 0 || !plan) return null
  const coins = (value: number): string => words.figure('coins', value, { currency: estimate.currency })
  return (
    <Ledger
      caption={labelOf(`moneyGroup.${group}`)}
      captionShown
      columns={[
        { key: 'name', label: labelOf('stores.what'), phone: 'first' },
        { key: 'quantity', label: labelOf('stores.amount'), align: 'right', phone: 'second' },
        { key: 'unit', label: labelOf('money.each'), align: 'right', phone: 'hide' },
        { key: 'sum', label: labelOf('money.sum'), align: 'right', phone: 'side' },
      ]}
      rows={[
        ...lines.map((line) => ({
          id: line.id,
          cells: {
            name: moneyLineName(plan, line, words),
            quantity:
              line.group === 'labour' ? (
                <WayFigure
                  view={view}
                  of={{ kind: 'money hours', line: line.id }}
                  text={amountText(line.quantity, line.unit, words)}
                  certainty="worked"
                  label={`${labelOf('stores.amount')}, ${moneyLineName(plan, line, words)}`}
                />
              ) : (
                amountText(line.quantity, line.unit, words)
              ),
            unit: line.unitCoins === undefined ? '' : coins(line.unitCoins),
            sum:
              line.coins === undefined ? (
                <PriceHere
                  view={view}
                  line={line}
                  currency={estimate.currency}
                  name={moneyLineName(plan, line, words)}
                />
              ) : (
                <WayFigure
                  view={view}
                  of={{ kind: 'money line', line: line.id }}
                  text={coins(line.coins)}
                  certainty="worked"
                  label={moneyLineName(plan, line, words)}
                />
              ),
          },
        })),
        {
          id: 'subtotal',
          total: true,
          cells: {
            name: labelOf('money.subtotal'),
            sum: (
              <WayFigure
                view={view}
                of={{ kind: 'money group', group }}
                text={coins(estimate.subtotals[group])}
                certainty="worked"
                label={labelOf(`moneyGroup.${group}`)}
              />
            ),
          },
        },
      ]}
    />
  )
}

const Sums = ({ view, estimate }: Omit<GroupProps, 'group'>) => {
  const { words, before } = view
  const key = (name: (typeof sums)[number]) => `${name}Coins` as const
  const coins = (value: number): string => words.figure('coins', value, { currency: estimate.currency })
  return (
    <Ledger
      caption={labelOf('money.total')}
      bare
      columns={[
        { key: 'name', label: labelOf('stores.what'), phone: 'first' },
        { key: 'sum', label: labelOf('money.sum'), align: 'right', phone: 'side' },
      ]}
      rows={sums.map((name) => {
        const was = before?.money?.[key(name)]
        return {
          id: name,
          total: name === 'total',
          cells: {
            name: labelOf(`money.${name}`),
            sum: (
              <WayFigure
                view={view}
                of={{ kind: 'money sum', of: name }}
                text={coins(estimate[key(name)])}
                was={was === undefined ? undefined : coins(was)}
                certainty="worked"
                label={labelOf(`money.${name}`)}
              />
            ),
          },
        }
      })}
    />
  )
}

/** What a rate, a price or a cost is for. */
function pricedName(view: JobView, { id, cells }: RawItem): string {
  const pack = itemsOf(view, { part: 'work', section: 'packs' }).find((one) => one.id === cells.pack)
  if (pack) return packName(view, pack.cells)
  if (cells.consumable !== undefined) return labelOf(`consumable.${String(cells.consumable)}`)
  return cells.role === undefined ? String(cells.name ?? id) : choiceLabel(String(cells.role))
}
