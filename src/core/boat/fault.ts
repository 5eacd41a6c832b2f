/** Notes of this room in one shape. */

import type { Note, NoteData } from '#core/note'

export const fault = (code: string, data: NoteData): Note => ({ code, severity: 'fault', data })

export const assumption = (code: string, data: NoteData): Note => ({
  code,
  severity: 'assumed',
  data,
  source: 'assumed',
})
