/** The five guesses that move dates and money most, each with its box: measure these first. */
import { useEffect, useRef, useState } from 'react'
import { labelOf } from '#words'
import { CellField } from '../../fields/cell-field.tsx'
import { itemsOf, nameOf } from '../../fields/items.ts'
import type { CellPlace, JobView } from '../../job/job-view.ts'
import { Part, Progress } from '../../parts/index.ts'
import { type Weighed, weightOf } from './weight.ts'
import './open.css'

const most = 5

export const MoveMost = ({ view }: { readonly view: JobView }) => {
  const { weighed, share } = useWeighed(view)
  return (
    <Part title={labelOf('open.most')}>
      {share < 1 ? <Progress label={labelOf('open.weighing')} share={share} /> : null}
      {share === 1 && weighed.length === 0 ? <p>{view.words.sentence('open.none')}</p> : null}
      <ul className="move-most">
        {weighed.slice(0, most).map((one) => (
          <li key={JSON.stringify(one.candidate.place)} className="move-most-row">
            <p>{movesText(view, one)}</p>
            <CellField view={view} place={one.candidate.place} helped />
          </li>
        ))}
      </ul>
    </Part>
  )
}

/** One guess after the other, so that an edit meanwhile is planned between two of them. Weighed once a visit. */
function useWeighed(view: JobView): { readonly weighed: readonly Weighed[]; readonly share: number } {
  const [weighed, setWeighed] = useState<readonly Weighed[]>([])
  const [share, setShare] = useState(0)
  const latest = useRef(view)
  latest.current = view
  useEffect(() => {
    let left = false
    const weigh = async (): Promise<void> => {
      const { ask, nowMs } = latest.current
      const candidates = await ask({ kind: 'candidates' })
      for (const [at, candidate] of candidates.entries()) {
        const effect = await ask({ kind: 'weigh', candidate, nowMs })
        if (left) return
        setWeighed((before) => [...before, { candidate, effect }].sort((a, b) => weightOf(b) - weightOf(a)))
        setShare((at + 1) / candidates.length)
      }
      if (!left) setShare(1)
    }
    void weigh().catch(() => setShare(1))
    return () => {
      left = true
    }
  }, [])
  return { weighed: weighed.filter((one) => weightOf(one) > 0), share }
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
