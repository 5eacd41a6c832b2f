/** Quick sums: the list of ten, and each at its own address; needs no job and no signal. */
import { type ReactNode, useMemo, useState } from 'react'
import { type SumId, sums } from '#sums'
import { createWords } from '#words'
import {
  browserShelf,
  type KeptSums,
  readKeptSums,
  type SumSystem,
  type TypedTexts,
  withText,
  writeKeptSums,
} from './kept-sums.ts'
import { SumList } from './sum-list.tsx'
import { SumSheet } from './sum-sheet.tsx'
import './sums.css'

export type SumsScreenProps = {
  /** `/sums` or `/sums/dew`. */
  readonly path: string
  readonly go: (href: string) => void
  /** The title block. */
  readonly block?: ReactNode
}

export const SumsScreen = ({ path, go, block }: SumsScreenProps) => {
  const [shelf] = useState(browserShelf)
  const [locale] = useState(readersLocale)
  const [kept, setKept] = useState(() => readKeptSums(shelf, locale))
  const [lasts, setLasts] = useState(true)
  const words = useMemo(() => createWords({ locale, system: kept.system }), [locale, kept.system])
  const keep = (next: KeptSums): void => {
    setKept(next)
    setLasts(writeKeptSums(shelf, next))
  }
  const units = { system: kept.system, onSystem: (system: SumSystem) => keep({ ...kept, system }) }
  const id = sumIn(path)
  const shared = { words, go, block, lasts, ...units }
  if (id === undefined) return <SumList {...shared} kept={kept} lost={isLost(path)} />
  return (
    <SumSheet
      key={id}
      {...shared}
      sum={sums[id]}
      typed={kept.texts[id] ?? {}}
      onType={(name, text) => keep(withText(kept, { id, name, text }))}
      onAll={(texts: TypedTexts) => keep({ ...kept, texts: { ...kept.texts, [id]: texts } })}
    />
  )
}

const partsOf = (path: string): readonly string[] =>
  path
    .replace(/[?#].*$/s, '')
    .split('/')
    .filter((part) => part !== '')

function sumIn(path: string): SumId | undefined {
  const id = partsOf(path)[1]
  return id !== undefined && Object.hasOwn(sums, id) ? (id as SumId) : undefined
}

const isLost = (path: string): boolean => partsOf(path).length > 1

function readersLocale(): string {
  return typeof navigator === 'undefined' ? 'en-GB' : navigator.language || 'en-GB'
}
