/** What stands behind the answer: all its figures, the way with figures filled in, notes, cautions, sources. */
import type { SumAnswer, SumId } from '#sums'
import { labelOf, type Words } from '#words'
import { CautionPanel, FigureText, Ledger, NoteList, Part, PartBlock } from '../../parts/index.ts'
import { isShown, resultText } from './result-text.ts'

export type ReasonProps = { readonly answer: SumAnswer; readonly words: Words }

export const SumFigures = ({ answer, words }: ReasonProps) => (
  <Part title={labelOf('sumScreen.figures')}>
    <Ledger
      bare
      caption={labelOf('sumScreen.figures')}
      columns={[
        { key: 'what', label: labelOf('sumScreen.what') },
        { key: 'figure', label: labelOf('sumScreen.figure'), align: 'right', phone: 'side' },
      ]}
      rows={answer.results.filter(isShown).flatMap((result) => {
        const { key, value } = result
        if (Array.isArray(value) && key === 'discsMm')
          return value.map((disc, index) => ({
            id: `disc ${index}`,
            cells: {
              what: `${labelOf('sumScreen.disc')} ${index + 1}`,
              figure: <Value text={resultText({ ...result, value: disc }, words, 'table')} />,
            },
          }))
        return [
          {
            id: key,
            cells: {
              what: labelOf(`result.${key}`),
              figure: <Value text={resultText(result, words, 'table')} />,
            },
          },
        ]
      })}
    />
  </Part>
)

const Value = ({ text }: { readonly text: string }) =>
  /^[−-]?\d/.test(text) ? <FigureText text={text} certainty="worked" /> : text

export const SumWay = ({ answer, words }: ReasonProps) => (
  <Part title={labelOf('heading.how')}>
    <ol className="sums-way">
      {answer.how.map(({ code, data }) => {
        const line = words.sentence(code, data)
        return <li key={line}>{line}</li>
      })}
    </ol>
    <PartBlock title={labelOf('heading.source')} level={3}>
      <ul className="sums-sources">
        {answer.sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ul>
    </PartBlock>
  </Part>
)

export const isCaution = ({ severity }: SumAnswer['notes'][number]): boolean =>
  severity === 'danger' || severity === 'caution'

/** A note may name an input; it is said as its box is lettered. */
const namedFields = (id: SumId, data: SumAnswer['notes'][number]['data']) =>
  typeof data.field === 'string'
    ? { ...data, field: labelOf(`sumField.${id}.${data.field}`).toLowerCase() }
    : data

export const SumNotes = ({ id, answer, words }: ReasonProps & { readonly id: SumId }) => {
  const notes = answer.notes.filter((note) => !isCaution(note))
  return notes.length === 0 ? null : (
    <Part title={labelOf('heading.notes')}>
      <NoteList
        notes={notes.map(({ code, data, severity }, index) => ({
          kind: severity === 'missing' ? 'missing' : 'note',
          mark: index + 1,
          text: words.sentence(code, namedFields(id, data)),
        }))}
      />
    </Part>
  )
}

/** Above what it is about, and never without the word that the product's own sheet decides. */
export const SumCautions = ({ answer, words }: ReasonProps) =>
  (['danger', 'caution'] as const).map((signal) => {
    const notes = answer.notes.filter(({ severity }) => severity === signal)
    return notes.length === 0 ? null : (
      <CautionPanel key={signal} signal={signal}>
        {notes.map(({ code, data }) => (
          <p key={code}>{words.sentence(code, data)}</p>
        ))}
        <p>{words.sentence('sumscreen.sheetRules')}</p>
      </CautionPanel>
    )
  })
