/** The key of figures: each word with its own rule under it. Stands in the title block. */
import type { Certainty } from '#core/note'
import { labelOf } from '#words'
import './figure-text.css'
import './figure-key.css'
import { classes } from './classes.ts'

const certainties: readonly Certainty[] = ['measured', 'sheet', 'typical', 'assumed', 'worked']

export const FigureKey = () => (
  <ul className="figure-key">
    {certainties.map((certainty) => (
      <li key={certainty}>
        <span
          className={classes(
            'figure-text-digits',
            `figure-text-${certainty}`,
            certainty === 'worked' && 'figure-key-worked',
          )}
        >
          {labelOf(`certainty.${certainty}`)}
        </span>
      </li>
    ))}
  </ul>
)
