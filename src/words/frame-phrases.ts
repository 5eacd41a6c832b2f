/** Short texts round every sheet: cells of the title block, counts on the stick, where edits are kept. */
export const framePhrases: Readonly<Record<string, string>> = {
  'frame.sheetOf': '{number, plural, =0 {{name}} other {# {name} of {of, number}}}',
  'frame.changeNumber': 'No. {number, number}',
  'frame.changeAt': 'No. {number, number}, {changedAtMs}',
  'frame.weatherThen': '{fromDate} to {toDate}, then typical',
  'frame.weatherFromTo': '{fromDate} to {toDate}',
  'frame.openCount':
    '{assumed, number} assumed, {missing, number} missing{wrong, plural, =0 {} other {, # wrong}}',
  'frame.countZones': '{count, plural, one {# zone} other {# zones}}',
  'frame.countFindings': '{count, plural, one {# finding} other {# findings}}',
  'frame.countWrong': '{count, number} to settle',
  'frame.countDays': '{count, plural, one {# day} other {# days}}',
  'frame.countShort': '{count, number} short',
  'stores.shelf': '{packs} on the shelf',
  'fields.wrong': '{count, plural, one {one cell is wrong} other {# cells are wrong}}',
  'frame.countUnsent': '{count, number} not sent',
  'frame.keptDetail':
    '{reach, select, there {} other {No server in reach.}} {waiting, plural, =0 {} one {One edit waits to be sent.} other {# edits wait to be sent.}} {others, plural, =0 {} one {# other job is only on this device.} other {# other jobs are only on this device.}} {lasting, select, no {This browser may drop data when space is short: let the server have it too.} other {}}',
}
