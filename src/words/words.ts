/** Sentences for one reader: a code and its data become one sentence, in the reader's units, locale and zone. */
import { labelOf, labels } from './labels.ts'
import { type Message, type MessageValue, readMessage } from './message.ts'
import { messages } from './messages.ts'
import { createWriter, type Reader, type Writer } from './writer.ts'

/** Data of a note or an error; values of other types are left out of the sentence. */
export type WordsData = Readonly<Record<string, unknown>>

export type Words = Writer & {
  /** The sentence for a code; for an unknown one the code and its data, readable. Never throws. */
  readonly sentence: (code: string, data?: WordsData) => string
  /** Plain word for a key such as `step.sand`; the key itself, spelled out, when there is none. */
  readonly label: (key: string) => string
}

/** Words for one reader; holds its own caches, so keep it for as long as the reader stays the same. */
export function createWords(reader: Reader): Words {
  const writer = createWriter(reader)
  const ready = new Map<string, Message>()
  const messageFor = (code: string): Message | undefined => {
    const text = Object.hasOwn(messages, code) ? messages[code] : undefined
    if (text === undefined) return undefined
    const message = ready.get(code) ?? readMessage(text, (count) => writer.figure('count', count))
    ready.set(code, message)
    return message
  }
  return {
    ...writer,
    label: labelOf,
    sentence: (code, data = {}) => {
      try {
        const message = messageFor(code)
        if (message) return message.write(valuesOf(data, { writer, message }))
      } catch {
        // Whatever is wrong with a sentence, the reader still gets what it was about.
      }
      return fallback(code, valuesOf(data, { writer, message: undefined }))
    },
  }
}

/** One sentence without keeping anything; use `createWords` for more than a few. */
export function sentence(code: string, data: WordsData, reader: Reader): string {
  return createWords(reader).sentence(code, data)
}

type Setting = { readonly writer: Writer; readonly message: Message | undefined }

function valuesOf(data: WordsData, setting: Setting): Readonly<Record<string, MessageValue>> {
  const values: Record<string, MessageValue> = {}
  for (const [key, value] of Object.entries(data)) {
    const written = spoken(key, value, { data, ...setting })
    if (written !== undefined) values[key] = written
  }
  return values
}

/** Data keys that hold several names, and the labels those are written with. */
const namedLists: Readonly<Record<string, string>> = {
  figures: 'sheetFigure',
  bondReason: 'bondReason',
  bondFixes: 'bondFix',
  bondOnly: 'bondOnly',
  oldCoats: 'oldCoat',
  oldSurface: 'oldSurface',
  coatKinds: 'coatKind',
}

const namesOf = (kind: string, list: string): string =>
  list
    .split(', ')
    .map((name) => labelOf(`${kind}.${name}`))
    .join(', ')

/** Lines of the estimate that nobody named: whose hour, or what is used up. */
const lineName = (line: string): string => labels[`labour.${line}`] ?? labels[`consumable.${line}`] ?? line

// A figure that a message takes as a number, or takes the plural of, stays one.
function spoken(
  key: string,
  value: unknown,
  { data, writer, message }: Setting & { readonly data: WordsData },
): MessageValue | undefined {
  if (typeof value === 'boolean') return String(value)
  if (key === 'line' && typeof value === 'string') return lineName(value)
  const list = Object.hasOwn(namedLists, key) ? namedLists[key] : undefined
  if (typeof value === 'string' && list !== undefined) return namesOf(list, value)
  if (typeof value === 'number' && message?.arguments.get(key) === 'count') return value
  if (typeof value === 'number' || typeof value === 'string') return writer.figure(key, value, data)
  return undefined
}

function fallback(code: string, values: Readonly<Record<string, MessageValue>>): string {
  const parts = Object.entries(values).map(([key, value]) => `${key} ${value}`)
  return parts.length === 0 ? code : `${code}: ${parts.join(', ')}`
}
