/** A scan from file to hull, step by step; nothing of the job changes before the hull is taken. */
import { labelOf } from '#words'
import { Button, Dialog, Progress } from '../../../parts/index.ts'
import './scan.css'
import { type ScanDialogProps, ScanSetting } from './scan-setting.tsx'
import { type Fault, useScan } from './use-scan.ts'

const ScanDialog = (props: ScanDialogProps) => {
  const { view, file, onClose } = props
  const scan = useScan(file)
  const { state } = scan
  if (state.kind === 'read') return <ScanSetting {...props} scan={scan} read={state.read} />
  const cancel = (
    <Button onClick={onClose}>{labelOf(state.kind === 'reading' ? 'scan.cancel' : 'scan.close')}</Button>
  )
  return (
    <Dialog title={file.name} onClose={onClose} actions={cancel}>
      {state.kind === 'reading' ? (
        <Progress label={labelOf(`scan.${state.step}`)} share={state.share} />
      ) : (
        <Refused view={view} faults={state.faults} />
      )}
    </Dialog>
  )
}

// Loaded when the first scan is chosen.
export default ScanDialog

const Refused = ({
  view: { words },
  faults,
}: {
  readonly view: ScanDialogProps['view']
  readonly faults: readonly Fault[]
}) => (
  <div role="alert">
    <p>{words.sentence('scan.refused')}</p>
    <ul className="scan-faults">
      {faults.map(({ code, data }) => (
        <li key={code}>{words.sentence(code, data)}</li>
      ))}
    </ul>
  </div>
)
