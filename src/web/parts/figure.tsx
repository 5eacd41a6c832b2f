/** A figure that says how sure it is, and when opened how it came about: click or Enter shows its parts and source. */
import { useRef, useState } from 'react'
import { labelOf } from '#words'
import './figure.css'
import type { FigureAsk, FigureDetail, FigureProps } from './figure-detail.ts'
import { FigurePanel } from './figure-panel.tsx'
import { FigureText } from './figure-text.tsx'

export type { FigureAsk, FigureDetail, FigurePart, FigureProps } from './figure-detail.ts'

export const Figure = ({ detail, ...figure }: FigureProps) =>
  detail === undefined ? (
    <span className="figure">
      <Spoken {...figure} />
    </span>
  ) : (
    <OpenFigure detail={detail} {...figure} />
  )

/** What is seen is set in runs that would be read in pieces; what is read is one text. */
const Spoken = ({ text, certainty, label, size }: FigureProps) => (
  <>
    <span aria-hidden="true">
      <FigureText text={text} certainty={certainty} size={size} />
    </span>
    <span className="unseen">
      {label === undefined ? '' : `${label}: `}
      {`${text}, ${labelOf(`certainty.${certainty}`)}`}
    </span>
  </>
)

const OpenFigure = ({ detail, ...figure }: FigureProps & { readonly detail: FigureDetail | FigureAsk }) => {
  const [open, setOpen] = useState(false)
  const button = useRef<HTMLButtonElement>(null)
  return (
    <>
      <button
        ref={button}
        type="button"
        className="figure figure-open"
        aria-haspopup="dialog"
        aria-expanded={open}
        onClick={() => setOpen(true)}
      >
        <Spoken {...figure} />
      </button>
      {open ? (
        <FigurePanel {...figure} detail={detail} beside={button} onClose={() => setOpen(false)} />
      ) : null}
    </>
  )
}
