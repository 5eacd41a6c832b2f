/** Shelter, place, dates and crew. */
import { workFields } from '#job'
import { labelOf } from '#words'
import { withUnit } from '../../fields/unit-hint.ts'
import { Button, ChoiceField, DateField, QuantityField, TextField, TimeField } from '../../parts/index.ts'
import { onePerson, type Person } from './answers.ts'
import type { QuestionProps } from './question.ts'

const shelters = workFields.place.fields.shelter.choices

export const PlaceQuestions = (props: QuestionProps) => {
  const { answers, change, wrong, words } = props
  return (
    <>
      <ChoiceField
        label={labelOf('newjob.shelter')}
        value={answers.shelter}
        choices={shelters.map((value) => ({ value, label: labelOf(`shelter.${value}`) }))}
        onChange={(shelter) => change({ shelter })}
      />
      <TextField
        label={labelOf('newjob.timeZone')}
        value={answers.timeZone}
        onCommit={(timeZone) => change({ timeZone })}
        problem={wrong('timeZone')}
      />
      <div className="new-job-pair">
        {(['latitude', 'longitude'] as const).map((key) => (
          <QuantityField
            key={key}
            label={labelOf(`newjob.${key}`)}
            unit="°"
            value={answers[key]}
            onCommit={(text) => change({ [key]: withUnit(text, '°') })}
            problem={wrong(key)}
          />
        ))}
      </div>
      <p className="field-help">{words.sentence('newjob.where')}</p>
      <div className="new-job-pair">
        {(['start', 'launch'] as const).map((key) => (
          <DateField
            key={key}
            label={labelOf(`newjob.${key}`)}
            value={answers[key]}
            onCommit={(text) => change({ [key]: text })}
            problem={wrong(key)}
          />
        ))}
      </div>
      <CrewQuestion {...props} />
    </>
  )
}

const CrewQuestion = ({ answers: { crew }, change, wrong }: QuestionProps) => {
  const set = (at: number, some: Partial<Person>): void =>
    change({ crew: crew.map((person, index) => (index === at ? { ...person, ...some } : person)) })
  return (
    <fieldset className="new-job-crew">
      <legend className="field-label">{labelOf('newjob.crew')}</legend>
      {crew.map((person, at) => (
        // People have no name of their own until they are given one: the place in the list is it.
        <div key={at} className="new-job-person">
          <TextField
            label={labelOf('newjob.person')}
            value={person.name}
            onCommit={(name) => set(at, { name })}
          />
          <TextField
            label={labelOf('newjob.days')}
            value={person.days}
            placeholder="Mon-Fri"
            onCommit={(days) => set(at, { days })}
            problem={wrong(`crew.${at}.days`)}
          />
          <div className="new-job-pair">
            {(['from', 'until'] as const).map((key) => (
              <TimeField
                key={key}
                label={labelOf(`newjob.${key}`)}
                value={person[key]}
                onCommit={(text) => set(at, { [key]: text })}
                problem={wrong(`crew.${at}.${key}`)}
              />
            ))}
          </div>
          {at === 0 ? null : (
            <Button onClick={() => change({ crew: crew.filter((_, index) => index !== at) })}>
              {labelOf('newjob.dropPerson')}
            </Button>
          )}
        </div>
      ))}
      <Button onClick={() => change({ crew: [...crew, onePerson] })}>{labelOf('newjob.addPerson')}</Button>
    </fieldset>
  )
}
