/** What was typed last in each sum, and in which units answers are read: kept on the device, never sent anywhere. */
import { type SumId, sums } from '#sums'

export type SumSystem = 'metric' | 'us'
export type TypedTexts = Readonly<Record<string, string>>

export type KeptSums = {
  readonly system: SumSystem
  /** As typed, by sum and input; what is empty is not there. */
  readonly texts: Readonly<Partial<Record<SumId, TypedTexts>>>
}

/** The part of `localStorage` that is used. */
export type SumsShelf = Pick<Storage, 'getItem' | 'setItem'>

const place = 'hardstand.sums'
/** A longer text is no input of a sum. */
const longest = 200

/** Reading is total: what is not understood, or was written by somebody else, is left out. */
export function readKeptSums(shelf: SumsShelf | undefined, locale: string): KeptSums {
  const empty: KeptSums = { system: /^en-US\b/i.test(locale) ? 'us' : 'metric', texts: {} }
  const kept = parsed(() => shelf?.getItem(place) ?? undefined)
  if (!isMap(kept)) return empty
  const texts = Object.values(sums).flatMap(({ id, inputs }) => {
    const typed = isMap(kept.texts) ? kept.texts[id] : undefined
    if (!isMap(typed)) return []
    const known = inputs.flatMap(({ name }) => {
      const text = Object.hasOwn(typed, name) ? typed[name] : undefined
      return typeof text === 'string' && text !== '' && text.length <= longest ? [[name, text]] : []
    })
    return known.length === 0 ? [] : [[id, Object.fromEntries(known)]]
  })
  const { system } = kept
  return {
    system: system === 'metric' || system === 'us' ? system : empty.system,
    texts: Object.fromEntries(texts),
  }
}

/** False when the browser keeps nothing: the sums still work, and forget. */
export function writeKeptSums(shelf: SumsShelf | undefined, kept: KeptSums): boolean {
  try {
    shelf?.setItem(place, JSON.stringify(kept))
    return shelf !== undefined
  } catch {
    return false
  }
}

export function withText(
  kept: KeptSums,
  { id, name, text }: { id: SumId; name: string; text: string },
): KeptSums {
  const { [name]: _, ...rest } = kept.texts[id] ?? {}
  return { ...kept, texts: { ...kept.texts, [id]: text === '' ? rest : { ...rest, [name]: text } } }
}

/** The shelf of this browser; undefined where it is shut, which some settings do. */
export function browserShelf(): SumsShelf | undefined {
  try {
    return globalThis.localStorage
  } catch {
    return undefined
  }
}

function parsed(read: () => string | undefined): unknown {
  try {
    const text = read()
    return text === undefined ? undefined : JSON.parse(text)
  } catch {
    return undefined
  }
}

const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
