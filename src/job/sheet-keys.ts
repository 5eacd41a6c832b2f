/** The cells that a product sheet, its recoat windows and its thinners have. */
import { workFields } from './work-fields.ts'

const keysOf = (section: 'sheets' | 'windows' | 'thinners'): readonly string[] =>
  Object.keys(workFields[section].fields)

export const sheetKeys = {
  sheets: keysOf('sheets'),
  windows: keysOf('windows'),
  thinners: keysOf('thinners'),
} as const
