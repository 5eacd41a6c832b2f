/** A scan as the hull: the file is picked or dropped, and what is done with it stands in a dialog. */
import { lazy, Suspense, useRef, useState } from 'react'
import { labelOf } from '#words'
import { cellOf, type JobView } from '../../../job/job-view.ts'
import { Button, Part } from '../../../parts/index.ts'
import { DropFiles } from '../../jobs/drop-files.tsx'
import '../../jobs/jobs.css'

const ScanDialog = lazy(() => import('./scan-dialog.tsx'))

export const ScanPart = ({ view }: { readonly view: JobView }) => {
  const input = useRef<HTMLInputElement>(null)
  const [file, setFile] = useState<File>()
  const from = cellOf(view, { part: 'work', section: 'boat', key: 'scan' })
  const bring = (files: readonly File[]): void => {
    if (!view.readOnly) setFile(files[0])
  }
  return (
    <Part title={labelOf('scan.part')}>
      <DropFiles onFiles={bring} hint={labelOf('scan.drop')}>
        <div className="scan-part">
          <p>{view.words.sentence('scan.say')}</p>
          {from === '' ? null : <p>{view.words.sentence('scan.from', { from })}</p>}
          {/* The button opens it: a field for files cannot be made to look like one. */}
          <input
            ref={input}
            type="file"
            hidden
            accept=".stl,.obj,.ply,.glb"
            aria-label={labelOf('scan.choose')}
            onChange={({ target }) => {
              bring([...(target.files ?? [])])
              // The same file again, mended, is a change too.
              target.value = ''
            }}
          />
          <Button onClick={() => input.current?.click()} disabled={view.readOnly}>
            {labelOf('scan.choose')}
          </Button>
        </div>
      </DropFiles>
      {file === undefined ? null : (
        <Suspense fallback={null}>
          <ScanDialog view={view} file={file} onClose={() => setFile(undefined)} />
        </Suspense>
      )}
    </Part>
  )
}
