// The boat in space as a browser shows it, and one that cannot.
import type { Page } from 'playwright-core'

/** Before the page opens: it gets no drawing in space. */
export const refuseSpace = (): void => {
  const usual = HTMLCanvasElement.prototype.getContext
  HTMLCanvasElement.prototype.getContext = function (
    this: HTMLCanvasElement,
    kind: string,
    ...rest: never[]
  ) {
    return kind.startsWith('webgl') ? null : Reflect.apply(usual, this, [kind, ...rest])
  } as typeof usual
}

/** What the canvas shows, as bytes of a picture. */
export const drawnBytes = (page: Page): Promise<string> =>
  page.locator('.solid-canvas').evaluate((canvas) => (canvas as HTMLCanvasElement).toDataURL())
