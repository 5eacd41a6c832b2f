/** Takes files that are dropped on what stands in it, and shows that it would. */
import { type DragEvent, type ReactNode, useState } from 'react'
import { classes } from '../../parts/index.ts'

export type DropFilesProps = {
  readonly onFiles: (files: readonly File[]) => void
  /** Shown while files are held over it. */
  readonly hint: string
  readonly children: ReactNode
}

export const DropFiles = ({ onFiles, hint, children }: DropFilesProps) => {
  const [over, setOver] = useState(false)
  const hold = (event: DragEvent): void => {
    if (!event.dataTransfer.types.includes('Files')) return
    event.preventDefault()
    setOver(true)
  }
  return (
    <div
      className={classes('jobs-drop', over && 'jobs-drop-over')}
      onDragEnter={hold}
      onDragOver={hold}
      onDragLeave={({ currentTarget, relatedTarget }) => {
        if (!currentTarget.contains(relatedTarget as Node | null)) setOver(false)
      }}
      onDrop={(event) => {
        setOver(false)
        if (event.dataTransfer.files.length === 0) return
        event.preventDefault()
        onFiles([...event.dataTransfer.files])
      }}
    >
      {children}
      {over ? <p className="jobs-drop-hint">{hint}</p> : null}
    </div>
  )
}
