/** What would make a figure surer: the way to each cell that a guess stands in for. */
import type { MouseEvent } from 'react'
import { navigate } from 'wouter/use-browser-location'
import type { CellAt, WayPart } from '#plan'
import { roomOfSection } from '#words'
import { cellAddress } from '../fields/asked-cell.ts'
import { allParts, partLabel } from './say-way.ts'
import './figures.css'

export type FirmUpProps = { readonly job: string; readonly parts: readonly WayPart[] }

const most = 5

type Unsure = WayPart & { readonly at: CellAt }

/** Guesses first, then what is typical; each cell once. */
export function unsureParts(parts: readonly WayPart[]): readonly Unsure[] {
  const open = allParts(parts).filter(
    (part): part is Unsure =>
      part.at !== undefined &&
      roomOfSection(part.at.section) !== undefined &&
      !part.term &&
      isUnsure(part.certainty),
  )
  const cells = new Map(open.map((part) => [JSON.stringify(part.at), part]))
  return [...cells.values()]
    .sort((a, b) => Number(a.certainty !== 'assumed') - Number(b.certainty !== 'assumed'))
    .slice(0, most)
}

const isUnsure = (certainty: WayPart['certainty']): boolean =>
  certainty === 'assumed' || certainty === 'typical'

export const FirmUp = ({ job, parts }: FirmUpProps) => (
  <ul className="firm-up">
    {unsureParts(parts).map((part) => {
      const href = `/job/${job}/${roomOfSection(part.at.section)}${cellAddress(part.at)}`
      const go = (event: MouseEvent<HTMLAnchorElement>): void => {
        event.preventDefault()
        event.currentTarget.closest('dialog')?.close()
        navigate(href)
      }
      return (
        <li key={href}>
          <a className="firm-up-link" href={href} onClick={go}>
            {partLabel(part)}
          </a>
        </li>
      )
    })}
  </ul>
)
