import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { must } from '#core/values/assert.ts'
import { registerWorker } from './device/worker-registration.ts'
import './look/look.css'
import { fetchRest } from './parts/later.tsx'
import { restoreLook } from './parts/look-choice.ts'
import { App } from './screens/App.tsx'

restoreLook()
createRoot(must(document.getElementById('root'), 'the page has no root')).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
registerWorker()
// So that a screen opens at once; without a worker the page has what it fetched while there was a signal, and nothing else.
void fetchRest()
