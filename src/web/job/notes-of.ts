/** The notes of a plan that belong to a sheet, by the first part of their codes. */
import type { ShownPlan } from '../worker/messages.ts'

export const notesOf = ({ notes }: ShownPlan, codes: RegExp): ShownPlan['notes'] =>
  notes.filter(({ code, severity }) => codes.test(code) && severity !== 'info')
