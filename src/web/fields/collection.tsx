/** A collection of the job to be edited: a line an item, one of them open; add, move and take away. */
import { type ReactNode, useEffect, useRef, useState } from 'react'
import type { RawCells } from '#job'
import { labelOf } from '#words'
import { type CollectionPlace, type JobView, pointerOf } from '../job/job-view.ts'
import { Button } from '../parts/index.ts'
import { useAskedItem } from './asked-cell.ts'
import { Cells, Fold } from './cells.tsx'
import { sectionOf } from './field-of.ts'
import { itemsOf, nameOf, type RawItem } from './items.ts'
import './fields.css'

export type CollectionProps = {
  readonly view: JobView
  readonly place: CollectionPlace
  /** Set most often; the others stand behind a fold. */
  readonly keys: readonly string[]
  /** Of those others, the ones that belong together, each group behind a fold of its own. */
  readonly groups?: readonly { readonly title: string; readonly keys: readonly string[] }[] | undefined
  /** Never shown: what says to whom the item belongs, where it stands within that. */
  readonly hidden?: readonly string[] | undefined
  /** Said under a box after its help. */
  readonly hintOf?: ((item: RawItem, key: string) => string | undefined) | undefined
  /** Cells of a new item. */
  readonly fresh: RawCells
  /** `Add a zone`. */
  readonly add: string
  /** Said at the right of an item's name. */
  readonly aside?: ((item: RawItem) => string) | undefined
  readonly name?: ((item: RawItem) => string) | undefined
  /** Only these of the place. */
  readonly only?: ((item: RawItem) => boolean) | undefined
  /** What else belongs to an item, under its cells while it is open. */
  readonly within?: ((item: RawItem) => ReactNode) | undefined
  /** The open item, where the sheet keeps it; else the collection does. */
  readonly open?: string | undefined
  readonly onOpen?: ((id: string | undefined) => void) | undefined
}

export const Collection = (props: CollectionProps) => {
  const { view, place, fresh, add } = props
  const [own, setOwn] = useState<string>()
  const open = props.onOpen ? props.open : own
  const setOpen = props.onOpen ?? setOwn
  const items = itemsOf(view, place).filter(props.only ?? (() => true))
  const asked = useAskedItem(place)
  const opening = useRef(setOpen)
  opening.current = setOpen
  useEffect(() => {
    if (asked !== undefined) opening.current(asked)
  }, [asked])
  return (
    <div className="collection">
      <ul className="collection-list">
        {items.map((item, at) => (
          <li key={item.id} className="collection-item">
            <ItemLine
              {...props}
              item={item}
              isOpen={item.id === open}
              onTurn={() => setOpen(item.id === open ? undefined : item.id)}
            />
            {item.id === open ? (
              <OpenItem
                {...props}
                item={item}
                before={items[at - 2]?.id}
                next={items[at + 1]?.id}
                first={at === 0}
              />
            ) : null}
          </li>
        ))}
      </ul>
      {view.readOnly ? null : <Button onClick={() => setOpen(view.edits.add(place, fresh))}>{add}</Button>}
    </div>
  )
}

type LineProps = CollectionProps & {
  readonly item: RawItem
  readonly isOpen: boolean
  readonly onTurn: () => void
}

const ItemLine = ({ view, place, item, isOpen, onTurn, name = nameOf, aside }: LineProps) => {
  const pointer = pointerOf({ ...place, item: item.id, key: '' })
  const wrong = view.problems.filter((problem) => problem.pointer.startsWith(pointer)).length
  return (
    <button type="button" className="collection-line" aria-expanded={isOpen} onClick={onTurn}>
      <span className="collection-name">{name(item)}</span>
      <span className="collection-aside">
        {wrong > 0 ? view.words.sentence('fields.wrong', { count: wrong }) : aside?.(item)}
      </span>
      <span className="collection-sign" aria-hidden="true">
        {isOpen ? '−' : '+'}
      </span>
    </button>
  )
}

type OpenProps = CollectionProps & {
  readonly item: RawItem
  /** The item before the one before: to move up is to stand behind it. */
  readonly before: string | undefined
  readonly next: string | undefined
  readonly first: boolean
}

const OpenItem = (props: OpenProps) => {
  const { view, place, keys, groups = [], hidden = [], item, before, next, first, within } = props
  const hintOf = props.hintOf && ((key: string) => props.hintOf?.(item, key))
  const shown = [...keys, ...hidden, ...groups.flatMap((group) => group.keys)]
  const more = Object.keys(sectionOf(place).fields).filter((key) => !shown.includes(key))
  const folds = [...groups, ...(more.length === 0 ? [] : [{ title: labelOf('fields.more'), keys: more }])]
  const here = { ...place, item: item.id }
  return (
    <div className="collection-open">
      <Cells view={view} place={here} keys={keys} helped hintOf={hintOf} />
      {folds.map((fold) => (
        <Fold key={fold.title} title={fold.title}>
          <Cells view={view} place={here} keys={fold.keys} helped hintOf={hintOf} />
        </Fold>
      ))}
      {within?.(item)}
      {view.readOnly ? null : (
        <div className="collection-acts">
          {first ? null : (
            <Button onClick={() => view.edits.move(here, before)}>{labelOf('fields.up')}</Button>
          )}
          {next === undefined ? null : (
            <Button onClick={() => view.edits.move(here, next)}>{labelOf('fields.down')}</Button>
          )}
          <Button onClick={() => view.edits.remove(here)}>{labelOf('fields.remove')}</Button>
        </div>
      )}
    </div>
  )
}
