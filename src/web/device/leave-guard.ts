/** Has the browser ask before the page is left, for as long as something in it is kept nowhere else. */
export function leaveGuard(): { readonly set: (on: boolean) => void } {
  const ask = (event: Event): void => event.preventDefault()
  return {
    set: (on) => {
      if (on) globalThis.addEventListener?.('beforeunload', ask)
      else globalThis.removeEventListener?.('beforeunload', ask)
    },
  }
}
