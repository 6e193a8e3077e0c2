import './state/outings-database.ts'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { must } from '#core/values/assert.ts'
import { registerWorker } from './device/worker-registration.ts'
import './look/look.css'
import { fetchRest } from './parts/later.tsx'
import { restoreLook } from './parts/look-choice.ts'
import { App } from './screens/App.tsx'
import { logInAddress } from './screens/paths.ts'
import { openOuting } from './state/actions.ts'

/** Milliseconds after which a page without its outing says that it waits. */
const patienceMs = 400

restoreLook()
void begin()

/** The first that is drawn is the hole: what waits for it would be drawn in vain. */
async function begin(): Promise<void> {
  const log = logInAddress(location.hash)
  if (log !== null) await Promise.race([openOuting(log), new Promise(resolve => setTimeout(resolve, patienceMs))])
  createRoot(must(document.getElementById('root'), 'the page has no root')).render(
    <StrictMode>
      <App />
    </StrictMode>,
  )
  registerWorker()
  // So that a screen opens at once; without a worker the page has what it fetched while there was a signal, and nothing else.
  void fetchRest()
}
