/** Kind and sizes of the boat. */
import { workFields } from '#job'
import { labelOf } from '#words'
import { withUnit } from '../../fields/unit-hint.ts'
import { ChoiceField, QuantityField, TextField } from '../../parts/index.ts'
import type { QuestionProps } from './question.ts'

const kinds = workFields.boat.fields.kind.choices

export const BoatQuestions = ({ answers, change, wrong }: QuestionProps) => {
  const unit = answers.units === 'us' ? 'ft' : 'm'
  return (
    <>
      <TextField
        label={labelOf('newjob.boatName')}
        value={answers.boatName}
        onCommit={(boatName) => change({ boatName })}
        problem={wrong('name')}
      />
      <TextField label={labelOf('newjob.name')} value={answers.name} onCommit={(name) => change({ name })} />
      <ChoiceField
        label={labelOf('newjob.units')}
        value={answers.units}
        choices={(['metric', 'us'] as const).map((value) => ({
          value,
          label: labelOf(`frame.system.${value}`),
        }))}
        onChange={(units) => change({ units })}
      />
      <ChoiceField
        label={labelOf('newjob.kind')}
        value={answers.kind}
        choices={kinds.map((value) => ({ value, label: labelOf(`boatKind.${value}`) }))}
        onChange={(kind) => change({ kind })}
      />
      {(['length', 'beam', 'freeboard'] as const).map((key) => (
        <QuantityField
          key={key}
          label={labelOf(`newjob.${key}`)}
          unit={unit}
          value={answers[key]}
          onCommit={(text) => change({ [key]: withUnit(text, unit) })}
          problem={wrong(key)}
        />
      ))}
    </>
  )
}
