/** What the page and the worker that works on a scan say to each other. */
import type { Problem } from '#intake'
import type { LaidScan, Laying, Pick3, Point3, ScanAnswers, ScanHull, SeenScan } from '#plan'

/** The largest file that a browser is asked to hold, bytes: five million triangles of STL, and no more. */
export const mostScanBytes = 300_000_000

export type GivenAnswers = Omit<ScanAnswers, 'laid'>

export type ScanQuestion =
  | { readonly kind: 'read'; readonly file: File }
  | { readonly kind: 'lay'; readonly laying: Laying }
  | { readonly kind: 'pick'; readonly laying: Laying; readonly pick: Pick3 }
  | { readonly kind: 'work'; readonly laying: Laying; readonly answers: GivenAnswers }

export type ToScan = ScanQuestion & { readonly ask: number }

export type ScanAnswer =
  | {
      readonly kind: 'read'
      readonly seen: SeenScan
      readonly up: 'y' | 'z'
      readonly problems: readonly Problem[]
    }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'laid'; readonly shown: LaidScan }
  | { readonly kind: 'picked'; readonly at: Point3 }
  | { readonly kind: 'worked'; readonly hull: ScanHull }

export type ScanStep = 'reading' | 'smoothing'

export type FromScan =
  | { readonly kind: 'progress'; readonly step: ScanStep; readonly share: number }
  | { readonly kind: 'answer'; readonly ask: number; readonly answer: ScanAnswer }
  | { readonly kind: 'fault'; readonly ask: number; readonly text: string }
