/** What keys do to the view. */
import { firstView, turned, type View, zoomed } from './view.ts'

const step = Math.PI / 18
const nearer = 1.25

const turns: Readonly<Record<string, (view: View) => View>> = {
  ArrowLeft: (view) => turned(view, step, 0),
  ArrowRight: (view) => turned(view, -step, 0),
  ArrowUp: (view) => turned(view, 0, step),
  ArrowDown: (view) => turned(view, 0, -step),
  '+': (view) => zoomed(view, nearer),
  '=': (view) => zoomed(view, nearer),
  '-': (view) => zoomed(view, 1 / nearer),
  '−': (view) => zoomed(view, 1 / nearer),
  Home: () => firstView,
}

/** Nothing for a key that does nothing here. */
export const turnOf = (key: string): ((view: View) => View) | undefined =>
  Object.hasOwn(turns, key) ? turns[key] : undefined

export const nearBy = (steps: 1 | -1) => (view: View) => zoomed(view, nearer ** steps)
