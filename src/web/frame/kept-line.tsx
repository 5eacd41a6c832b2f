/** Always in sight: where the newest edits are, and the way back from them. */
import { useEffect } from 'react'
import { labelOf } from '#words'
import type { JobView } from '../job/job-view.ts'
import { Button, KeptMark } from '../parts/index.ts'
import './frame.css'

export const KeptLine = ({ view }: { readonly view: JobView }) => {
  const { kept, words, history } = view
  const { online, waiting, others, lasting } = kept
  return (
    <div className="kept-line off-paper">
      <KeptMark
        where={kept.fault === undefined ? kept.where : 'fault'}
        detail={words.sentence('frame.keptDetail', {
          reach: online ? 'there' : 'away',
          waiting,
          others,
          lasting: lasting === undefined ? 'unknown' : lasting ? 'yes' : 'no',
        })}
      />
      <div className="kept-line-acts">
        <Button onClick={history.undo} disabled={!history.canUndo}>
          {labelOf('frame.undo')}
        </Button>
        <Button onClick={history.redo} disabled={!history.canRedo}>
          {labelOf('frame.redo')}
        </Button>
      </div>
    </div>
  )
}

/** The usual keys, but not inside a box, where they belong to the text that is being typed. */
export function useHistoryKeys(history: JobView['history'] | undefined): void {
  useEffect(() => {
    if (!history) return
    const press = (event: KeyboardEvent): void => {
      const target = event.target as HTMLElement | null
      if (event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey)) return
      if (target?.closest('input, textarea, select')) return
      event.preventDefault()
      if (event.shiftKey) history.redo()
      else history.undo()
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [history])
}
