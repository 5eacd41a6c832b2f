/** The five guesses that move dates and money most, each with its box: measure these first. */
import { useEffect, useSyncExternalStore } from 'react'
import { labelOf } from '#words'
import { CellField } from '../../fields/cell-field.tsx'
import { itemsOf, nameOf } from '../../fields/items.ts'
import type { CellPlace, JobView } from '../../job/job-view.ts'
import type { Weighed } from '../../job/weight.ts'
import { Part, Progress } from '../../parts/index.ts'
import './open.css'

const most = 5

export const MoveMost = ({ view }: { readonly view: JobView }) => {
  const { listen, now, start } = view.weighing
  const { list, share } = useSyncExternalStore(listen, now)
  // What was tried when the job was opened may be old.
  useEffect(start, [start])
  return (
    <Part title={labelOf('open.most')}>
      {share < 1 ? <Progress label={labelOf('open.weighing')} share={share} /> : null}
      {share === 1 && list.length === 0 ? <p>{view.words.sentence('open.none')}</p> : null}
      <ul className="move-most">
        {list.slice(0, most).map((one) => (
          <li key={JSON.stringify(one.candidate.place)} className="move-most-row">
            <p>{movesText(view, one)}</p>
            <CellField view={view} place={one.candidate.place} helped />
          </li>
        ))}
      </ul>
    </Part>
  )
}

function movesText(view: JobView, { candidate: { place }, effect }: Weighed): string {
  const { words, plan } = view
  const { days, litres, coins = 0 } = effect
  const moveDays = Math.round(days * 10) / 10
  const currency = plan?.money?.currency
  const moved = [
    ...(moveDays > 0 ? [words.sentence('open.movesEnd', { days: words.figure('days', moveDays) })] : []),
    ...(litres > 0 ? [words.sentence('open.movesPaint', { litres: words.figure('volumeL', litres) })] : []),
    ...(coins > 0 && currency !== undefined
      ? [words.sentence('open.movesSum', { sum: words.figure('coins', coins, { currency }) })]
      : []),
  ]
  return words.sentence('open.moves', { name: placeName(view, place), moved: moved.join(', ') })
}

function placeName(view: JobView, { part, section, item, key }: CellPlace): string {
  const cell = labelOf(`cell.${section}.${key}`)
  const found =
    item === undefined ? undefined : itemsOf(view, { part, section }).find(({ id }) => id === item)
  return found ? `${nameOf(found)}, ${cell.toLowerCase()}` : cell
}
