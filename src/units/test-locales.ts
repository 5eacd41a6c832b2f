/** The locales that tests write in: points and commas, currency before and after, two signs for minus. */

export const locales = [
  'en-US',
  'en-GB',
  'de-DE',
  'fr-FR',
  'sv-SE',
  'de-CH',
  'nb-NO',
  'pt-PT',
  'pl-PL',
  'ar-EG',
] as const
