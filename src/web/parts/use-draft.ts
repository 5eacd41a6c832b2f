/** Text while it is typed: kept apart from the value until blur or Enter commits it; Escape brings the value back. */
import { type KeyboardEvent, useState } from 'react'

export type Draft = {
  readonly value: string
  readonly onChange: (event: { readonly currentTarget: { readonly value: string } }) => void
  readonly onBlur: () => void
  readonly onKeyDown: (event: KeyboardEvent<HTMLElement>) => void
}

export type DraftOptions = {
  readonly value: string
  readonly onCommit: (text: string) => void
  /** Enter writes a line instead of committing. */
  readonly lines?: boolean
}

export function useDraft({ value, onCommit, lines = false }: DraftOptions): Draft {
  const [draft, setDraft] = useState<string | undefined>(undefined)
  const commit = (): void => {
    setDraft(undefined)
    if (draft !== undefined && draft !== value) onCommit(draft)
  }
  return {
    value: draft ?? value,
    onChange: (event) => setDraft(event.currentTarget.value),
    onBlur: commit,
    onKeyDown: (event) => {
      if (event.key === 'Enter' && !lines) commit()
      // A dialog around it stays open: Escape here gives the old value back, no more.
      if (event.key === 'Escape' && draft !== undefined) {
        event.preventDefault()
        event.stopPropagation()
        setDraft(undefined)
      }
    },
  }
}
