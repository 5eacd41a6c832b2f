/** The ten sums as big rows: what each asks, and its last answer while its boxes are filled. */
import type { ReactNode } from 'react'
import { type Sum, sums } from '#sums'
import { labelOf, type Words } from '#words'
import { Banner, Icon, Part, Sheet } from '../../parts/index.ts'
import type { KeptSums, SumSystem } from './kept-sums.ts'
import { saySum } from './say-sum.ts'
import { SumIcon } from './sum-icon.tsx'
import { SumLink } from './sum-link.tsx'
import { UnitSwitch } from './unit-switch.tsx'
import { workSum } from './work-sum.ts'

export type SumListProps = {
  readonly words: Words
  readonly kept: KeptSums
  readonly go: (href: string) => void
  readonly block: ReactNode
  /** The address named a sum that is not there. */
  readonly lost: boolean
  readonly lasts: boolean
  readonly system: SumSystem
  readonly onSystem: (system: SumSystem) => void
}

export const SumList = ({ words, kept, go, block, lost, lasts, system, onSystem }: SumListProps) => (
  <Sheet
    title={labelOf('sumScreen.title')}
    say={labelOf('sumScreen.say')}
    head={{ title: labelOf('sumScreen.name') }}
    action={<UnitSwitch system={system} onSystem={onSystem} />}
    block={block}
  >
    <Part flush label={labelOf('sumScreen.all')}>
      {lost ? <Banner>{words.sentence('sumscreen.unknown')}</Banner> : null}
      {lasts ? null : <Banner fault>{words.sentence('sumscreen.notKept')}</Banner>}
      <ul className="sums-list">
        {Object.values(sums).map((sum) => (
          <li key={sum.id}>
            <SumLink className="sums-row" href={`/sums/${sum.id}`} go={go}>
              <SumIcon id={sum.id} />
              <span className="sums-row-text">
                <span className="sums-row-name">{labelOf(`sumName.${sum.id}`)}</span>
                <span className="sums-row-ask">{lineOf(sum, { kept, words })}</span>
              </span>
              <Icon kind="on" />
            </SumLink>
          </li>
        ))}
      </ul>
    </Part>
  </Sheet>
)

function lineOf(sum: Sum, { kept, words }: Pick<SumListProps, 'kept' | 'words'>): string {
  const { answer } = workSum(sum, kept.texts[sum.id] ?? {})
  if (answer === undefined) return labelOf(`sumAsk.${sum.id}`)
  const { code, data } = saySum(sum.id, answer, (side) => labelOf(`value.${side}`))
  return words.sentence(code, data)
}
