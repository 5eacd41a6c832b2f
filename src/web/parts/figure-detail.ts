/** What a figure shows when it is opened; every text comes worded. */
import type { ReactNode } from 'react'
import type { Certainty } from '#core/note'
import type { FigureSize } from './figure-text.tsx'

export type FigureDetail = {
  /** The same value in the other system of units. */
  readonly other?: string | undefined
  /** With figures filled in: "7.70 m × 1.28 m". */
  readonly formula?: string | undefined
  /** A sentence for what is no formula. */
  readonly how?: string | undefined
  readonly parts?: readonly FigurePart[] | undefined
  readonly source?: ReactNode
  /** What would make it surer, with a link or a button if there is one. */
  readonly firmUp?: ReactNode
}

/** Worked out when the figure is opened; nothing when nobody knows how it came about. */
export type FigureAsk = () => Promise<FigureDetail | undefined>

export type FigurePart = {
  readonly label: string
  readonly text: string
  readonly certainty: Certainty
  /** How the part itself was worked out. */
  readonly formula?: string | undefined
  readonly source?: string | undefined
}

export type FigureProps = {
  /** As the words write it: "9.84 m²". */
  readonly text: string
  readonly certainty: Certainty
  /** What it is the figure of, for its accessible name; leave out where a heading says it. */
  readonly label?: string | undefined
  readonly size?: FigureSize | undefined
  readonly detail?: FigureDetail | FigureAsk | undefined
}
