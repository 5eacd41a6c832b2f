/** The answers so far, kept in this browser until the job is made. */
import { useState } from 'react'
import { type Answers, firstAnswers } from './answers.ts'

const key = 'hardstand new job'

export type Asked = {
  readonly answers: Answers
  readonly change: (some: Partial<Answers>) => void
}

export function useAnswers(): Asked & { readonly forget: () => void } {
  const [answers, setAnswers] = useState(read)
  return {
    answers,
    change: (some) =>
      setAnswers((before) => {
        const now = { ...before, ...some }
        localStorage.setItem(key, JSON.stringify(now))
        return now
      }),
    forget: () => localStorage.removeItem(key),
  }
}

/** Whatever stands there that is no answer is left out. */
function read(): Answers {
  const first = firstAnswers({
    today: new Date().toLocaleDateString('en-CA'),
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  })
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? '{}') as Partial<Answers>
    return {
      ...first,
      ...kept,
      crew: Array.isArray(kept.crew) && kept.crew.length > 0 ? kept.crew : first.crew,
    }
  } catch {
    return first
  }
}
