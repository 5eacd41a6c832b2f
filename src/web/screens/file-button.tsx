/** A button that opens the device's own picker of files. */
import { useRef } from 'react'
import { Button } from '../parts/index.ts'

export type FileButtonProps = {
  readonly label: string
  /** Endings it offers, such as `.csv,.txt`. */
  readonly accept: string
  readonly onFiles: (files: readonly File[]) => void
  readonly multiple?: boolean
  readonly disabled?: boolean
}

export const FileButton = ({ label, accept, onFiles, multiple, disabled }: FileButtonProps) => {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      {/* The button opens it: a field for files cannot be made to look like one. */}
      <input
        ref={input}
        type="file"
        hidden
        multiple={multiple}
        accept={accept}
        aria-label={label}
        onChange={({ target }) => {
          onFiles([...(target.files ?? [])])
          // The same file again, mended, is a change too.
          target.value = ''
        }}
      />
      <Button onClick={() => input.current?.click()} disabled={disabled}>
        {label}
      </Button>
    </>
  )
}
