/** The minute it goes wrong: pick what it is from rows for a thumb; nothing here needs a signal. */
import { type MishapId, mishapActs, mishaps } from '#catalogue'
import { labelOf } from '#words'
import { Icon, Part, Sheet } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'
import { mishapFigures } from './mishap-data.ts'
import { MishapSheet } from './mishap-sheet.tsx'
import './what-now.css'

/** The mishap stands in the address, so that a reload finds it again. */
export const WhatNowScreen = ({ view, rest, block, go, href, head }: ScreenProps) => {
  const id = (Object.keys(mishaps) as MishapId[]).find((one) => one === rest)
  if (id !== undefined)
    return (
      <MishapSheet key={id} {...{ id, view, block, go, href, head }} onBack={() => go(href('what-now'))} />
    )
  return (
    <Sheet title={labelOf('whatNow.title')} say={labelOf('whatNow.say')} head={head} block={block}>
      {groups.map(([group, ids]) => (
        <Part key={group} flush title={labelOf(`mishapGroup.${group}`)}>
          <ul className="what-now-list">
            {ids.map((one) => (
              <li key={one}>
                <button
                  type="button"
                  className="what-now-row"
                  onClick={() => go(href(`what-now/${encodeURIComponent(one)}`))}
                >
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
