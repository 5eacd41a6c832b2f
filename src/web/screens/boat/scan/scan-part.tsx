/** A scan as the hull: the file is picked or dropped, and what is done with it stands in a dialog. */

import { lazy, Suspense, useState } from 'react'
import { labelOf } from '#words'
import { cellOf, type JobView } from '../../../job/job-view.ts'
import { Part } from '../../../parts/index.ts'
import { FileButton } from '../../file-button.tsx'
import { DropFiles } from '../../jobs/drop-files.tsx'
import '../../jobs/jobs.css'

const ScanDialog = lazy(() => import('./scan-dialog.tsx'))

export const ScanPart = ({ view }: { readonly view: JobView }) => {
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
          <FileButton
            label={labelOf('scan.choose')}
            accept=".stl,.obj,.ply,.glb"
            onFiles={bring}
            disabled={view.readOnly}
          />
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
