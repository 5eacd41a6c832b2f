/** A figure as it is set: digits in Text, unit in Lettering, and under the digits the rule that says how sure it is. */
import type { Certainty } from '#core/note'
import './figure-text.css'
import { classes } from './classes.ts'
import { figureRuns } from './figure-runs.ts'

export type FigureSize = 'small' | 'body' | 'part' | 'mix' | 'clock'

export type FigureTextProps = {
  /** As the words write it: "9.84 m²", "24 ft 7 1/4 in". */
  readonly text: string
  readonly certainty: Certainty
  readonly size?: FigureSize | undefined
}

export const FigureText = ({ text, certainty, size = 'body' }: FigureTextProps) => (
  <span className={classes('figure-text', `figure-text-${size}`)}>
    {figureRuns(text).map((run) =>
      run.kind !== 'digits' ? (
        <span key={run.at} className={`figure-text-${run.kind}`}>
          {run.text}
        </span>
      ) : (
        <span key={run.at} className={classes('figure-text-digits', `figure-text-${certainty}`)}>
          {run.text}
          {run.fraction === undefined ? null : (
            <span className="figure-text-fraction">{`\u2009${run.fraction}`}</span>
          )}
        </span>
      ),
    )}
  </span>
)
