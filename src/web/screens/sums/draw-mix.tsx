/** The parts of a mix in a cup, with their volumes, masses and levels. */
import { labelOf } from '#words'
import { Cup } from './cup.tsx'
import { cupLevels } from './cup-levels.ts'
import { resultText } from './result-text.ts'
import { numberOf } from './say-sum.ts'
import type { SumDrawingProps } from './sum-props.ts'

export const MixCup = ({ answer, words }: SumDrawingProps) => {
  const levels = cupLevels(
    ['base', 'hardener', 'thinner', 'additive'].map((key) => ({
      key,
      volumeMl: numberOf(answer, `${key}Ml`) ?? 0,
    })),
  )
  const ml = (key: string, value: number): string => resultText({ key, value, dimension: 'volume' }, words)
  const label = words.sentence('sumscreen.cupDrawing', {
    levels: levels.map(({ key, toMl }) => `${labelOf(`result.${key}Ml`)} ${ml('levelMl', toMl)}`).join(', '),
  })
  const massOf = (key: string): string | undefined => {
    const mass = numberOf(answer, `${key}G`)
    return mass === undefined
      ? undefined
      : resultText({ key: `${key}G`, value: mass, dimension: 'mass' }, words)
  }
  return (
    <Cup
      label={label}
      rows={levels.map((level) => ({
        level,
        name: labelOf(`result.${level.key}Ml`),
        amount: ml(`${level.key}Ml`, level.volumeMl),
        to: words.sentence('sumscreen.levelTo', { levelMl: level.toMl }),
        mass: massOf(level.key),
      }))}
    />
  )
}
