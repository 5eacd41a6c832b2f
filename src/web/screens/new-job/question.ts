/** What each group of questions is given. */
import type { Words } from '#words'
import type { Asked } from './use-answers.ts'

export type QuestionProps = Asked & {
  readonly words: Words
  /** The sentence for a wrong answer; undefined when it is right or was not looked at yet. */
  readonly wrong: (field: string) => string | undefined
}
