/** The minute it goes wrong: pick what it is from rows for a thumb; nothing here needs a signal. */
import { type ReactNode, useState } from 'react'
import { type MishapId, mishapActs, mishaps } from '#catalogue'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Icon, Part, Sheet, type SheetHead } from '../../parts/index.ts'
import { mishapFigures } from './mishap-data.ts'
import { MishapSheet } from './mishap-sheet.tsx'
import './what-now.css'

export type WhatNowScreenProps = {
  readonly view: JobView
  readonly block?: ReactNode
  readonly go: (href: string) => void
  /** Address of a room of this job, for the way on to the days. */
  readonly href?: (room: string) => string
  readonly head?: SheetHead
}

export const WhatNowScreen = ({ view, block, go, href, head }: WhatNowScreenProps) => {
  const [id, setId] = useState<MishapId | undefined>(undefined)
  const open = (next: MishapId | undefined): void => {
    setId(next)
    globalThis.scrollTo?.(0, 0)
  }
  if (id !== undefined)
    return <MishapSheet key={id} {...{ id, view, block, go, href, head }} onBack={() => open(undefined)} />
  return (
    <Sheet
      title={labelOf('whatNow.title')}
      say={labelOf('whatNow.say')}
      head={head ?? { title: labelOf('whatNow.name') }}
      block={block}
    >
      {groups.map(([group, ids]) => (
        <Part key={group} flush title={labelOf(`mishapGroup.${group}`)}>
          <ul className="what-now-list">
            {ids.map((one) => (
              <li key={one}>
                <button type="button" className="what-now-row" onClick={() => open(one)}>
                  <span className="what-now-row-text">
                    <span className="what-now-row-name">{labelOf(`mishapName.${one}`)}</span>
                    <span className="what-now-row-see">
                      {view.words.sentence(mishapActs[one].see, mishapFigures(one))}
                    </span>
                  </span>
                  <Icon kind="on" />
                </button>
              </li>
            ))}
          </ul>
        </Part>
      ))}
    </Sheet>
  )
}

/** In the order of the table: people first. */
const groups: readonly (readonly [group: string, ids: readonly MishapId[]])[] = grouped()

function grouped() {
  const made = new Map<string, MishapId[]>()
  for (const id of Object.keys(mishaps) as MishapId[]) {
    const group = camel(mishaps[id].cells.group ?? '')
    made.set(group, [...(made.get(group) ?? []), id])
  }
  return [...made]
}

function camel(name: string): string {
  return name.replace(/ ([a-z])/g, (_, letter: string) => letter.toUpperCase())
}
