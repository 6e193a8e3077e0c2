import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { must } from '#core/values/assert.ts'
import { canSleep, registerWorker } from './device/worker-registration.ts'
import './look/look.css'
import { loadAll } from './parts/later.tsx'
import { restoreLook } from './parts/look-choice.ts'
import { App } from './screens/App.tsx'

restoreLook()
createRoot(must(document.getElementById('root'), 'the page has no root')).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
registerWorker()
// Without a worker the page has what it loaded while there was a signal, and nothing else.
if (!canSleep()) loadAll().catch(() => undefined)
