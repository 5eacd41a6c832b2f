import { expect, it } from 'vitest'
import * as Y from 'yjs'
import { createUndo, partOf } from '#replica'
import { jobEdits } from './job-edits.ts'

const desk = () => {
  const [work, money, origin] = [new Y.Doc(), new Y.Doc(), {}]
  const undo = createUndo([work, money], { origin, joinMs: 400, changed: () => {} })
  let made = 0
  const edits = jobEdits({ work, money }, { origin, newId: () => `n${made++}`, cut: () => undo.cut() })
  return { undo, edits, corners: () => Object.keys(partOf(work).corners ?? {}).length }
}

it('what was done together goes back by one undo, and the edits around it by their own', () => {
  const { undo, edits, corners } = desk()
  const place = { part: 'work', section: 'corners' } as const
  for (const count of [1, 4, 1]) {
    edits.together((all) => {
      for (let k = 0; k < count; k++) all.add(place, { zone: 'sole' })
    })
  }
  const steps = [corners()]
  while (undo.canUndo()) {
    undo.undo()
    steps.push(corners())
  }
  expect(steps).toEqual([6, 5, 1, 0])
})
