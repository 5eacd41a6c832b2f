/** The answer in large figures, on a phone always in sight; ghosted while a box is wrong, and then it says so. */
import type { Sum, SumAnswer } from '#sums'
import { labelOf, type Words } from '#words'
import { classes, FigureText } from '../../parts/index.ts'
import { resultText } from './result-text.ts'
import { leadingResults, type Verdict, verdictOf } from './say-sum.ts'
import type { WorkedSum } from './work-sum.ts'

export type AnswerStripProps = {
  readonly sum: Sum
  readonly worked: WorkedSum
  /** The last one that could be worked. */
  readonly answer: SumAnswer | undefined
  readonly words: Words
}

export const AnswerStrip = ({ sum, worked, answer, words }: AnswerStripProps) => {
  const old = worked.answer === undefined
  const verdict = answer === undefined ? undefined : verdictOf(sum.id, answer)
  return (
    <section className="sums-strip" aria-label={labelOf('sumScreen.answer')}>
      {answer === undefined ? null : (
        <div className={classes('sums-strip-figures', old && 'sums-old')}>
          {verdict ? <VerdictMark {...verdict} /> : null}
          {leadingResults(sum.id, answer).map((result, index) => (
            <div className="sums-strip-figure" key={result.key}>
              <span className="sums-strip-label">{labelOf(`result.${result.key}`)}</span>
              <FigureText
                text={resultText(result, words)}
                certainty="worked"
                size={index === 0 ? 'clock' : 'mix'}
              />
            </div>
          ))}
        </div>
      )}
      <p className="sums-strip-said" role="status">
        {old ? stillOpen({ sum, worked, answer, words }) : null}
      </p>
    </section>
  )
}

/** By word and by shape: a tick in a square, or a cross in one that stands on its corner. */
const VerdictMark = ({ go, word }: Verdict) => (
  <div className="sums-verdict">
    <svg width="56" height="56" viewBox="0 0 56 56" aria-hidden="true">
      {go ? (
        <>
          <rect x="6" y="6" width="44" height="44" fill="var(--go)" stroke="var(--ink)" strokeWidth="2.5" />
          <path d="m15 29 9 9 17-20" fill="none" stroke="var(--mark)" strokeWidth="5" />
        </>
      ) : (
        <>
          <path d="M28 2 54 28 28 54 2 28Z" fill="var(--fault)" stroke="var(--ink)" strokeWidth="2.5" />
          <path d="m19 19 18 18m0-18L19 37" stroke="var(--mark)" strokeWidth="5" />
        </>
      )}
    </svg>
    <strong className="sums-verdict-word">{labelOf(word)}</strong>
  </div>
)

function stillOpen({ sum, worked, answer, words }: AnswerStripProps): string {
  if (Object.keys(worked.faults).length > 0)
    return answer === undefined ? '' : words.sentence('sumscreen.wrong')
  const fields = worked.missing.map((name) => labelOf(`sumField.${sum.id}.${name}`).toLowerCase()).join(', ')
  const toGive = words.sentence('sumscreen.toGive', { fields })
  return answer === undefined ? toGive : `${toGive}. ${words.sentence('sumscreen.before')}`
}
