/** How the writer is asked to set a text: figures stand in columns, so every digit is equally wide. */
import type { PdfTextOptions } from './press.ts'
import type { TypeStyle } from './type-styles.ts'

/** Text without digits is set without features, which the writer remembers from one time to the next. */
export function textOptions(text: string, style: TypeStyle): PdfTextOptions {
  const features = style.face === 'lettering' ? ['lnum'] : ['tnum']
  return {
    characterSpacing: style.trackingPt ?? 0,
    ...(/\d/.test(text) ? { features } : {}),
  }
}
