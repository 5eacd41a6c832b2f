/** A figure that an edit moved: the old one stays struck through beside it for four seconds, with the change's number. */
import { useEffect, useState } from 'react'
import { labelOf } from '#words'
import './moved-figure.css'
import { Figure, type FigureProps } from './figure.tsx'
import { NoteFlag } from './note-flag.tsx'

export type MovedFigureProps = FigureProps & {
  /** What it read before; undefined or the same while nothing moved it. */
  readonly was?: string | undefined
  readonly change: number
}

export const movedForMs = 4000

export const MovedFigure = ({ was, change, ...figure }: MovedFigureProps) => {
  const moved = was !== undefined && was !== figure.text
  const key = moved ? `${change} ${was} ${figure.text}` : ''
  const [seen, setSeen] = useState('')
  useEffect(() => {
    if (key === '') return
    const timer = setTimeout(() => setSeen(key), movedForMs)
    return () => clearTimeout(timer)
  }, [key])
  return (
    <span className="moved-figure">
      {moved && seen !== key ? (
        <>
          <NoteFlag kind="change" mark={change} small />
          <del className="moved-figure-was">
            <span className="unseen">{labelOf('screenPart.was')} </span>
            {was}
          </del>
        </>
      ) : null}
      <Figure {...figure} />
    </span>
  )
}
