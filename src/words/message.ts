/** One ICU message made ready: its arguments are known, and a value that is missing leaves a mark, not an error. */
import { type Formatters, IntlMessageFormat } from 'intl-messageformat'

type Elements = ReturnType<IntlMessageFormat['getAst']>
type Element = Elements[number]

export type MessageValue = string | number

/** `choice` picks a branch (`none` when the value is missing), `count` is a number or takes a plural. */
export type ArgumentUse = 'text' | 'choice' | 'count'

export type Message = {
  /** Names of the values the message speaks of, with how each is used. */
  readonly arguments: ReadonlyMap<string, ArgumentUse>
  readonly write: (values: Readonly<Record<string, MessageValue>>) => string
}

/** Language of the tables: plurals follow it, figures follow the reader. */
const language = 'en'

/**
 * Parses a message; throws where the text is not ICU, which a test keeps from ever happening. `writeNumber`
 * writes counts, so that they look like every other figure.
 */
export function readMessage(text: string, writeNumber: (value: number) => string): Message {
  const formatters = formattersWith(writeNumber)
  const format = new IntlMessageFormat(text, language, undefined, { ignoreTag: true, formatters })
  const uses = new Map<string, ArgumentUse>()
  collect(format.getAst(), uses)
  const absent = Object.fromEntries([...uses].map(([name, use]) => [name, use === 'choice' ? 'none' : '?']))
  return { arguments: uses, write: (values) => String(format.format({ ...absent, ...values })) }
}

const formattersWith = (writeNumber: (value: number) => string): Formatters => ({
  getNumberFormat: () => ({ format: writeNumber }) as Intl.NumberFormat,
  getDateTimeFormat: (...given) => new Intl.DateTimeFormat(...given),
  getPluralRules: (...given) => new Intl.PluralRules(...given),
})

function collect(elements: Elements, uses: Map<string, ArgumentUse>): void {
  for (const element of elements) {
    const use = useOf(element)
    if (use === undefined || !('value' in element)) continue
    const known = uses.get(element.value)
    if (known === undefined || known === 'text') uses.set(element.value, use)
    if ('options' in element) for (const option of Object.values(element.options)) collect(option.value, uses)
  }
}

// Element types of the parser: 0 literal, 1 argument, 2 number, 3 date, 4 time, 5 select, 6 plural, 7 #.
function useOf(element: Element): ArgumentUse | undefined {
  if (element.type === 5) return 'choice'
  if (element.type === 2 || element.type === 6) return 'count'
  return element.type >= 1 && element.type <= 4 ? 'text' : undefined
}
