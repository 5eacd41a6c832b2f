/** Sentences of the sheets Survey, Marks, Stores, Money and Log. */
export const sheetsWords: Readonly<Record<string, string>> = {
  'survey.title':
    '{count, plural, =0 {Nothing was found that has to be mended.} one {One finding, {hours} of repair.} other {# findings, {hours} of repair.}}',
  'survey.unread':
    '{count, plural, one {One more finding is} other {# more findings are}} not in these hours: {names}. Something in {count, plural, one {it} other {them}} cannot be read; the mark beside it says what.',
  'survey.titleUnread':
    '{count, plural, one {One finding} other {# findings}} written down, and {count, plural, one {it cannot} other {none of them can}} be read yet.',
  'survey.off':
    '{count, plural, one {One fitting comes off and goes} other {# fittings come off and go}} on again: {hours}.',
  'survey.nothingLeft':
    'Nothing is marked to be left alone. Identification number, builder’s plate, transducer and anodes always are: add them, so that somebody masks them.',
  'survey.left': 'Masked and left alone: {names}.',
  'marks.title': '{tapeM} of fine-line tape for every edge once.',
  'marks.drawing':
    '{name} on the side of the hull, with the {count, plural, one {place} other {# places}} where its heights are struck.',
  'marks.none': 'No stripe and no panel is marked yet.',
  'stores.title':
    'Buy {buyL} in {packs, plural, one {one pack} other {# packs}} of {products, plural, one {one product} other {# products}}.',
  'stores.titleShort': '{needL} to buy, and no pack is known yet.',
  'stores.shortSay':
    '{count, plural, one {For one product no pack is known: give a size.} other {For # products no pack is known: give their sizes.}}',
  'money.title': '{total} with tax, {net} before it.',
  'money.signed':
    'Signed for {signedCoins}{date, select, none {} other { on {date}}}. {way, select, over {The plan now comes to {overCoins} more.} under {The plan now comes to {overCoins} less.} other {The plan comes to the same.}}',
  'money.incomplete': 'Prices are missing, so the sum is too small.',
  'money.notBegun':
    'Nobody has reckoned this job yet. The plan runs without; a currency begins the estimate.',
  'money.currencyWrong':
    'Three letters or a sign, such as EUR, USD or £; where a sign is that of several, the letters.',
  'log.title':
    '{count, plural, =0 {Nothing is written down yet.} one {One entry of what really happened.} other {# entries of what really happened.}}',
  'log.say':
    'An entry stays as it was written; a correction is a new one.{waiting, plural, =0 {} other { No server in reach: what is new waits on this device.}}',
  'log.none': 'Ticks on the sheet Today, readings and notes are listed here.',
}
