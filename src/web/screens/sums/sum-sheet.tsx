/** One sum: its boxes, the answer while one types, the drawing, the way there, what to mind, and where it is from. */
import { useMemo, useState } from 'react'
import type { SumAnswer, SumId } from '#sums'
import { labelOf } from '#words'
import { Banner, Button, Part, PartRow, Sheet } from '../../parts/index.ts'
import { unbroken } from './result-text.ts'
import { saySum } from './say-sum.ts'
import { AnswerStrip } from './sum-answer.tsx'
import { hasDrawing, SumDrawing } from './sum-drawing.tsx'
import { examplesOf } from './sum-examples.ts'
import { SumFields } from './sum-fields.tsx'
import { SumLink } from './sum-link.tsx'
import type { SumSheetProps } from './sum-props.ts'
import { isCaution, SumCautions, SumFigures, SumNotes, SumWay } from './sum-reasons.tsx'
import { UnitSwitch } from './unit-switch.tsx'
import { workSum } from './work-sum.ts'

export const SumSheet = (props: SumSheetProps) => {
  const { sum, typed, words, system, onSystem, go, block, lasts } = props
  const worked = useMemo(() => workSum(sum, typed), [sum, typed])
  const [good, setGood] = useState(worked.answer)
  if (worked.answer !== undefined && worked.answer !== good) setGood(worked.answer)
  const empty = Object.keys(typed).length === 0
  const answer = worked.answer ?? (empty ? undefined : good)
  const old = worked.answer === undefined
  const said =
    answer === undefined || old ? undefined : saySum(sum.id, answer, (side) => labelOf(`value.${side}`))
  return (
    <Sheet
      title={
        said === undefined ? labelOf(`sumAsk.${sum.id}`) : unbroken(words.sentence(said.code, said.data))
      }
      head={{
        title: labelOf(`sumName.${sum.id}`),
        aside: (
          <SumLink className="sums-back" href="/sums" go={go}>
            {labelOf('sumScreen.all')}
          </SumLink>
        ),
      }}
      action={
        <>
          <SumLink className="button off-paper sums-wide-only" href="/sums" go={go}>
            {labelOf('sumScreen.all')}
          </SumLink>
          <UnitSwitch system={system} onSystem={onSystem} />
        </>
      }
      block={block}
    >
      <AnswerStrip sum={sum} worked={worked} answer={answer} words={words} />
      {lasts ? null : <Banner fault>{words.sentence('sumscreen.notKept')}</Banner>}
      <Part
        title={labelOf('sumScreen.given')}
        notes={
          answer === undefined || !hasBeside(sum.id, answer) ? undefined : (
            <div className={old ? 'sums-old' : undefined}>
              <SumDrawing id={sum.id} answer={answer} words={words} />
              <SumCautions answer={answer} words={words} />
            </div>
          )
        }
      >
        <SumFields {...props} worked={worked} />
        <Fill {...props} empty={empty} />
      </Part>
      {answer === undefined ? null : (
        <div className={old ? 'sums-old' : undefined}>
          <PartRow>
            <SumFigures answer={answer} words={words} />
            <SumWay answer={answer} words={words} />
            <SumNotes id={sum.id} answer={answer} words={words} />
          </PartRow>
        </div>
      )}
    </Sheet>
  )
}

const hasBeside = (id: SumId, answer: SumAnswer): boolean => hasDrawing(id) || answer.notes.some(isCaution)

const Fill = ({ sum, system, onAll, empty }: SumSheetProps & { readonly empty: boolean }) => (
  <div className="sums-fill off-paper">
    {empty ? (
      <Button onClick={() => onAll(examplesOf(sum, system))}>{labelOf('sumScreen.example')}</Button>
    ) : (
      <Button onClick={() => onAll({})}>{labelOf('sumScreen.clear')}</Button>
    )}
  </div>
)
