/** Currencies by ISO 4217 code: how many digits the smallest coin has, and the signs people write. */

const none = 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'
const two =
  'AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW CNY COP ' +
  'COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR ' +
  'JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN ' +
  'NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL ' +
  'THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG'
const three = 'BHD IQD JOD KWD LYD OMR TND'
const four = 'CLF UYW'

/** SOURCE: ISO 4217:2015, list one (current currencies), minor unit column; from memory. */
const minorDigits: ReadonlyMap<string, number> = new Map(
  [none, two, three, four].flatMap((codes, index) =>
    codes.split(' ').map((code): [string, number] => [code, [0, 2, 3, 4][index] as number]),
  ),
)

export const currencies: readonly string[] = [...minorDigits.keys()].sort()

/** Every currency that a text names by itself: its code, or a sign; several where a sign is shared. */
export const currenciesOf = (text: string): readonly string[] =>
  text.length > 5 ? [] : currenciesSpelled(text.trim().replace(/\.$/, ''))

/** Digits of the smallest coin: 2 for EUR, 0 for JPY, 3 for KWD; undefined when the code is not in the list. */
export const minorDigitsOf = (code: string): number | undefined => minorDigits.get(code)

/** A dollar sign alone is taken for the US dollar; `kr` and `¥` stand for several. */
const signs: Readonly<Record<string, readonly string[]>> = {
  '€': ['EUR'],
  $: ['USD'],
  us$: ['USD'],
  '£': ['GBP'],
  ca$: ['CAD'],
  c$: ['CAD'],
  a$: ['AUD'],
  au$: ['AUD'],
  nz$: ['NZD'],
  '₹': ['INR'],
  '₩': ['KRW'],
  '₪': ['ILS'],
  '₺': ['TRY'],
  '₱': ['PHP'],
  '₫': ['VND'],
  zł: ['PLN'],
  kč: ['CZK'],
  kr: ['SEK', 'NOK', 'DKK', 'ISK'],
  '¥': ['JPY', 'CNY'],
}

/** Every currency that a sign or code can stand for. */
export const currenciesSpelled = (spelling: string): readonly string[] => {
  const lower = spelling.toLowerCase()
  if (Object.hasOwn(signs, lower)) return signs[lower] as readonly string[]
  const code = spelling.toUpperCase()
  return minorDigits.has(code) ? [code] : []
}

/** The sign written for a currency, or nothing where only the code is clear. */
export const signOf = (code: string): string | undefined =>
  code === 'EUR' ? '€' : code === 'USD' ? '$' : code === 'GBP' ? '£' : undefined
