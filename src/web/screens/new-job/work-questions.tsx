/** What is painted, what is on it, and what goes on. */
import { workFields } from '#job'
import { labelOf } from '#words'
import { ChoiceField, TextField, YesField } from '../../parts/index.ts'
import './new-job.css'
import type { QuestionProps } from './question.ts'

const existing = workFields.zones.fields.existing.choices
const finishes = workFields.job.fields.finish.choices

export const WorkQuestions = ({ answers, change, words }: QuestionProps) => (
  <>
    <fieldset className="new-job-crew">
      <legend className="field-label">{labelOf('newjob.zones')}</legend>
      {(['topsides', 'transom', 'deck'] as const).map((key) => (
        <YesField
          key={key}
          label={labelOf(`newjob.${key}`)}
          value={answers[key]}
          onChange={(yes) => change({ [key]: yes })}
        />
      ))}
    </fieldset>
    <ChoiceField
      label={labelOf('newjob.existing')}
      value={answers.existing}
      choices={existing.map((value) => ({ value, label: labelOf(`existing.${value}`) }))}
      onChange={(value) => change({ existing: value })}
    />
    <ChoiceField
      label={labelOf('newjob.paint')}
      value={answers.paint}
      choices={(['one-part', 'two-part'] as const).map((value) => ({
        value,
        label: labelOf(`paint.${value}`),
      }))}
      onChange={(paint) => change({ paint })}
    />
    {answers.paint === 'two-part' ? <p className="field-help">{words.sentence('newjob.twoPart')}</p> : null}
    <ChoiceField
      label={labelOf('newjob.finish')}
      value={answers.finish}
      choices={finishes.map((value) => ({ value, label: labelOf(`finish.${value}`) }))}
      onChange={(finish) => change({ finish })}
    />
    <TextField
      label={labelOf('newjob.colour')}
      value={answers.colour}
      onCommit={(colour) => change({ colour })}
    />
    <ChoiceField
      label={labelOf('newjob.shade')}
      value={answers.shade}
      choices={(['light', 'medium', 'dark'] as const).map((value) => ({
        value,
        label: labelOf(`shade.${value}`),
      }))}
      onChange={(shade) => change({ shade })}
    />
    {answers.deck ? (
      <YesField
        label={labelOf('newjob.nonSkid')}
        value={answers.nonSkid}
        onChange={(nonSkid) => change({ nonSkid })}
      />
    ) : null}
    <YesField
      label={labelOf('newjob.stripe')}
      value={answers.stripe}
      onChange={(stripe) => change({ stripe })}
    />
  </>
)
