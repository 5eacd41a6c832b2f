/**
 * What stands in a box is kept when the box is left. A phone that puts the page aside may never bring it back, so the
 * box is left then too, and gone back to when the page is seen again.
 */
export function commitOnHide(page: Document): void {
  let left: HTMLElement | undefined
  page.addEventListener('visibilitychange', () => {
    if (page.visibilityState === 'hidden') {
      const box = page.activeElement
      if (!(box instanceof HTMLElement) || !box.matches('input, textarea')) return
      left = box
      box.blur()
    } else {
      if (page.activeElement === page.body) left?.focus({ preventScroll: true })
      left = undefined
    }
  })
}
