import { createRoot } from 'react-dom/client'
import { must } from '#core/values/assert.ts'
import '../look/look.css'
import './parts.css'
import { PartsPage } from './PartsPage.tsx'

createRoot(must(document.getElementById('root'), 'the page has no root')).render(<PartsPage />)
