/**
 * What a cell of a job document may hold, as data. The reader, the JSON Schema, the reference page
 * and the types of the projection all come from these tables, so they cannot drift apart.
 */
import type { Dimension, Sign } from '#units'

type Base = {
  readonly doc: string
  readonly need?: 'required'
  /** What the projection holds while a required cell of a section of one map is missing; always with an error. */
  readonly standIn?: string
}

export type TextField = Base & {
  readonly kind: 'text'
  /** The whole text has to match; `example` is one that does. */
  readonly pattern?: string
  readonly example?: string
}
export type ChoiceField = Base & { readonly kind: 'choice'; readonly choices: readonly string[] }
export type QuantityField = Base & {
  readonly kind: 'quantity'
  readonly dimension: Dimension
  /** Which signs are allowed; left out, what the dimension allows. */
  readonly sign?: Sign
  /** Bounds in SI, both included; a value outside is a problem, never clipped. */
  readonly least?: number
  readonly most?: number
  /**
   * How large it usually is, where the usual unit would be odd: a film in microns, a hand's breadth in millimetres,
   * solvent in grams a litre.
   */
  readonly scale?: 'film' | 'hand' | 'solvent'
}
/** A price: read with its currency, kept in the smallest coin. `per` may stand behind it: `£45 an hour`. */
export type MoneyField = Base & { readonly kind: 'money'; readonly per?: 'hour' | 'piece' }
/** A currency by its code or its sign, projected to the code after ISO 4217. */
export type CurrencyField = Base & { readonly kind: 'currency' }
export type CountField = Base & { readonly kind: 'count'; readonly least: number; readonly most: number }
export type RatioField = Base & { readonly kind: 'ratio' }
export type DateField = Base & { readonly kind: 'date' }
/** Date and time with its offset from UTC: `2027-04-14T09:30+02:00`. */
export type InstantField = Base & { readonly kind: 'instant' }
export type TimeOfDayField = Base & { readonly kind: 'timeOfDay' }
/** Days of the week: `Mon-Fri`, `Sat, Sun`. Projected to ISO numbers, Monday is 1. */
export type WeekdaysField = Base & { readonly kind: 'weekdays' }
export type YesNoField = Base & { readonly kind: 'yesno' }
/** Hours against temperature: `5C: 24h, 15C: 10h, 25C: 6h`. */
export type ClockTableField = Base & { readonly kind: 'clockTable' }
/** Id of an item in another section. */
export type RefField = Base & { readonly kind: 'ref'; readonly to: string }
/** Ids of items in another section, separated by commas. */
export type RefsField = Base & { readonly kind: 'refs'; readonly to: string }

export type Field =
  | TextField
  | ChoiceField
  | QuantityField
  | MoneyField
  | CurrencyField
  | CountField
  | RatioField
  | DateField
  | InstantField
  | TimeOfDayField
  | WeekdaysField
  | YesNoField
  | ClockTableField
  | RefField
  | RefsField

export type Fields = Readonly<Record<string, Field>>

/** `one`: the section is itself the map of cells. `many`: a map from id to such maps, sorted by (`order`, id). */
export type Section = { readonly shape: 'one' | 'many'; readonly doc: string; readonly fields: Fields }
export type Sections = Readonly<Record<string, Section>>

/** A quantity as the plan sees it: SI value, the words it was written in, and how sure the person was. */
export type Figure = {
  readonly value: number
  readonly text: string
  /** `assumed` when written with `about`, `~` or a question mark; else `measured`. */
  readonly certainty: 'measured' | 'assumed'
}
export type Money = { readonly coins: number; readonly currency: string; readonly text: string }
export type Ratio = { readonly parts: readonly number[]; readonly text: string }
export type ClockPoint = { readonly airC: number; readonly hours: number }

type ValueOf<F extends Field> = F extends QuantityField
  ? Figure
  : F extends MoneyField
    ? Money
    : F extends ChoiceField
      ? F['choices'][number]
      : F extends CountField
        ? number
        : F extends RatioField
          ? Ratio
          : F extends WeekdaysField
            ? readonly number[]
            : F extends YesNoField
              ? boolean
              : F extends ClockTableField
                ? readonly ClockPoint[]
                : F extends RefsField
                  ? readonly string[]
                  : string

type Required<S extends Fields> = { [K in keyof S]: S[K] extends { need: 'required' } ? K : never }[keyof S]

/** The cells of one item after reading: required ones are there, the others may be missing. */
export type Cells<S extends Fields> = { readonly [K in Required<S>]: ValueOf<S[K]> } & {
  readonly [K in Exclude<keyof S, Required<S>>]?: ValueOf<S[K]>
}
export type Item<S extends Fields> = { readonly id: string } & Cells<S>

/** A document after reading: sections of one map as cells, collections as sorted lists without removed items. */
export type Projection<D extends Sections> = {
  readonly [K in keyof D]: D[K]['shape'] extends 'many'
    ? readonly Item<D[K]['fields']>[]
    : Cells<D[K]['fields']>
}
