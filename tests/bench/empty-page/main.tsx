import { createRoot } from 'react-dom/client'
import { must } from '#core/values/assert.ts'

createRoot(must(document.getElementById('root'), 'the page has no root')).render(<p>One line.</p>)
void navigator.serviceWorker.register('/worker.js', { scope: '/' })
