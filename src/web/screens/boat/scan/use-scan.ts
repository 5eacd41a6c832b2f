/** A scan from file to hull on the page: one worker while it is looked at, ended when it is not. */
import { useCallback, useEffect, useRef, useState } from 'react'
import type { LaidScan, Laying, Pick3, Point3, ScanHull, SeenScan } from '#plan'
import { openScanDesk, type ScanDesk } from '../../../worker/scan-client.ts'
import type { GivenAnswers, ScanAnswer, ScanStep } from '../../../worker/scan-messages.ts'

export type Fault = { readonly code: string; readonly data: Readonly<Record<string, unknown>> }

export type ReadScan = Extract<ScanAnswer, { readonly kind: 'read' }> & { readonly seen: SeenScan }

export type ScanState =
  | { readonly kind: 'reading'; readonly step: ScanStep; readonly share: number }
  | { readonly kind: 'refused'; readonly faults: readonly Fault[] }
  | { readonly kind: 'read'; readonly read: ReadScan }

export type ScanWork = {
  readonly state: ScanState
  readonly lay: (laying: Laying) => Promise<LaidScan | undefined>
  readonly pick: (laying: Laying, pick: Pick3) => Promise<Point3 | undefined>
  readonly work: (laying: Laying, answers: GivenAnswers) => Promise<ScanHull | undefined>
}

export function useScan(file: File): ScanWork {
  const [state, setState] = useState<ScanState>({ kind: 'reading', step: 'reading', share: 0 })
  const desk = useRef<ScanDesk>(undefined)
  const fail = useCallback((error: unknown) => setState({ kind: 'refused', faults: [failed(error)] }), [])
  useEffect(() => {
    const open = openScanDesk((step, share) => setState({ kind: 'reading', step, share }))
    desk.current = open
    open.ask({ kind: 'read', file }).then((answer) => {
      if (answer.kind === 'read') setState({ kind: 'read', read: answer })
      if (answer.kind === 'refused') setState({ kind: 'refused', faults: answer.problems })
    }, fail)
    return () => open.close()
  }, [file, fail])
  const asked = useCallback(
    async (question: Parameters<ScanDesk['ask']>[0]): Promise<ScanAnswer | undefined> => {
      try {
        return await desk.current?.ask(question)
      } catch (error) {
        fail(error)
        return undefined
      }
    },
    [fail],
  )
  const lay = useCallback(
    async (laying: Laying) => {
      const answer = await asked({ kind: 'lay', laying })
      return answer?.kind === 'laid' ? answer.shown : undefined
    },
    [asked],
  )
  const pick = async (laying: Laying, place: Pick3) => {
    const answer = await asked({ kind: 'pick', laying, pick: place })
    return answer?.kind === 'picked' ? answer.at : undefined
  }
  const work = async (laying: Laying, answers: GivenAnswers) => {
    const answer = await asked({ kind: 'work', laying, answers })
    return answer?.kind === 'worked' ? answer.hull : undefined
  }
  return { state, lay, pick, work }
}

const failed = (error: unknown): Fault => ({
  code: 'scan.failed',
  data: { text: error instanceof Error ? error.message : String(error) },
})
