/** What the parts of a sum's sheet are given. */
import type { ReactNode } from 'react'
import type { Sum, SumAnswer } from '#sums'
import type { Words } from '#words'
import type { SumSystem, TypedTexts } from './kept-sums.ts'

export type SumSheetProps = {
  readonly sum: Sum
  readonly typed: TypedTexts
  readonly words: Words
  readonly system: SumSystem
  readonly onSystem: (system: SumSystem) => void
  readonly onType: (name: string, text: string) => void
  readonly onAll: (texts: TypedTexts) => void
  readonly go: (href: string) => void
  readonly block: ReactNode
  readonly lasts: boolean
}

export type SumDrawingProps = { readonly answer: SumAnswer; readonly words: Words }
