/** Product sheets to take from a file and to pass on as one. */
import { useState } from 'react'
import { mostSheetBytes, readSheets, writeSheetsCsv, writeSheetsJson } from '#intake'
import { sheetKeys } from '#job'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { sheetsOf, takeSheets } from '../../job/take-sheets.ts'
import { Button } from '../../parts/index.ts'
import { FileButton } from '../file-button.tsx'

type Told = { readonly isFault: boolean; readonly lines: readonly string[] }

export const SheetFiles = ({ view }: { readonly view: JobView }) => {
  const [told, setTold] = useState<Told>()
  const take = async (file: File | undefined): Promise<void> => {
    if (file) setTold(await taken(view, file))
  }
  return (
    <div className="sheet-files">
      {view.readOnly ? null : (
        <FileButton
          label={labelOf('sheetFiles.take')}
          accept=".json,.csv,.txt"
          onFiles={([file]) => void take(file)}
        />
      )}
      <Button onClick={() => save('sheets.json', writeSheetsJson(sheetsOf(view)))}>
        {labelOf('sheetFiles.json')}
      </Button>
      <Button onClick={() => save('sheets.csv', writeSheetsCsv(sheetsOf(view), sheetKeys))}>
        {labelOf('sheetFiles.csv')}
      </Button>
      <div aria-live="polite">
        {told?.lines.map((line) => (
          <p key={line} className={told.isFault ? 'sheet-files-fault' : 'sheet-files-told'}>
            {line}
          </p>
        ))}
      </div>
    </div>
  )
}

async function taken(view: JobView, file: File): Promise<Told> {
  const { words } = view
  // What is larger is refused by its size alone; reading it into memory would not help.
  const bytes = new Uint8Array(await file.slice(0, mostSheetBytes + 1).arrayBuffer())
  const read = readSheets(bytes, sheetKeys)
  const lines = read.problems.map(({ line, code, data }) =>
    line === undefined ? words.sentence(code, data) : `${line}: ${words.sentence(code, data)}`,
  )
  if (!read.ok) return { isFault: true, lines }
  takeSheets(view, read.file)
  const count = Object.keys(read.file.sheets).length
  return { isFault: false, lines: [words.sentence('sheetfiles.taken', { count }), ...lines] }
}

function save(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/plain' }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(url), 60_000)
}
