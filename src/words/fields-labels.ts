/** Words of editing: what is done to the items of a job. */
export const fieldsLabels: Readonly<Record<string, string>> = {
  'fields.more': 'More of this',
  'fields.up': 'Move up',
  'fields.down': 'Move down',
  'fields.remove': 'Take away',
}
