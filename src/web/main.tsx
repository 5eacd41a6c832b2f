/** Starts the page: opens what this device keeps, then shows it. */
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import './look/index.css'
import { openDevice } from './device/device.ts'
import { App, NoDevice } from './frame/app.tsx'
import { commitOnHide } from './frame/commit-on-hide.ts'

const root = document.getElementById('root')

async function start(place: HTMLElement): Promise<void> {
  const shown = createRoot(place)
  try {
    const device = await openDevice()
    shown.render(
      <StrictMode>
        <App device={device} />
      </StrictMode>,
    )
  } catch {
    shown.render(<NoDevice />)
  }
}

commitOnHide(document)
if (root) void start(root)
// Without it the page works all the same, as long as the server is in reach.
if ('serviceWorker' in navigator) {
  addEventListener('load', () => void navigator.serviceWorker.register('/sw.js').catch(() => undefined))
}
