/** The worker that reads a scan and works on it: hundreds of megabytes stay out of the page, and ending it frees them. */
import { type MeshRead, readMesh } from '#intake'
import { type Laying, laidScan, type OpenedScan, openScan, pickOnScan, scanHull } from '#plan'
import { type FromScan, mostScanBytes, type ScanAnswer, type ToScan } from './scan-messages.ts'

const port = self as unknown as {
  onmessage: ((event: { readonly data: ToScan }) => void) | null
  postMessage: (message: FromScan) => void
}

type Laid = NonNullable<ReturnType<typeof laidScan>>

/** One scan: what was read, and how it was laid last, since laying looks at every point and marks are many. */
function scanDesk(): (message: ToScan) => Promise<ScanAnswer> {
  let opened: OpenedScan | undefined
  let last: { readonly key: string; readonly laid: Laid } | undefined
  const laidAs = ({ scan }: OpenedScan, laying: Laying): Laid => {
    const key = JSON.stringify(laying)
    const laid = last?.key === key ? last.laid : laidScan(scan, laying)
    if (laid === undefined) throw new Error('scan: it has no area')
    last = { key, laid }
    return laid
  }
  return async (message) => {
    if (message.kind === 'read') {
      const read = await readScan(message.file)
      opened = read.opened
      return read.answer
    }
    if (opened === undefined) throw new Error('scan: none is open')
    const { scan } = opened
    const now = laidAs(opened, message.laying)
    if (message.kind === 'lay') return { kind: 'laid', shown: now.shown }
    if (message.kind === 'pick') return { kind: 'picked', at: pickOnScan(scan, now.laid, message.pick) }
    return { kind: 'worked', hull: scanHull(scan, { ...message.answers, laid: now.laid }) }
  }
}

const answered = scanDesk()

port.onmessage = ({ data }) => {
  answered(data).then(
    (answer) => port.postMessage({ kind: 'answer', ask: data.ask, answer }),
    (error: unknown) => {
      const text = error instanceof Error ? error.message : String(error)
      port.postMessage({ kind: 'fault', ask: data.ask, text })
    },
  )
}

/** How much of the whole each step is about. */
const shares = { reading: [0, 0.4], smoothing: [0.5, 0.9] } as const
/** Smoothing doubles its rounds until the area has settled, at most this often. */
const mostDoublings = 8

function tell(step: 'reading' | 'smoothing', share: number): void {
  const [from, to] = shares[step]
  port.postMessage({ kind: 'progress', step, share: from + (to - from) * share })
}

type Read = { readonly answer: ScanAnswer; readonly opened?: OpenedScan | undefined }

async function readScan(file: File): Promise<Read> {
  if (file.size > mostScanBytes)
    return refused('intake.meshTooLarge', { sizeBytes: file.size, mostBytes: mostScanBytes })
  tell('reading', 0)
  const mesh = meshOf(new Uint8Array(await file.arrayBuffer()))
  if (!mesh.ok) return { answer: { kind: 'refused', problems: mesh.problems } }
  tell('smoothing', 0)
  const { told, distinct, problems } = mesh
  const opened = openScan({ mesh: mesh.mesh, distinct, unit: told.unit }, (rounds) => {
    tell('smoothing', Math.log2(rounds + 1) / mostDoublings)
    return true
  })
  if (opened === undefined || opened.scan.triangles === 0) return refused('intake.meshNothing', {})
  return { opened, answer: { kind: 'read', seen: opened.seen, up: told.up ?? 'z', problems } }
}

/** The bytes are let go of as soon as this returns. */
const meshOf = (bytes: Uint8Array): MeshRead =>
  readMesh(bytes, { progress: (share) => tell('reading', share), stopped: () => false })

const refused = (code: string, data: Readonly<Record<string, number>>): Read => ({
  answer: { kind: 'refused', problems: [{ code, severity: 'error', data }] },
})
