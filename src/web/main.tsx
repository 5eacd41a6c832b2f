/** Starts the page. */
import { createRoot } from 'react-dom/client'
import './look/index.css'
import { PartsPage } from './screens/parts/parts-page.tsx'

const root = document.getElementById('root')
if (root) createRoot(root).render(location.pathname === '/parts' ? <PartsPage /> : <p>Hardstand</p>)
