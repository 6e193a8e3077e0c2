// Runs in the page of `bench tap`: a bare React button beside ours, and the times of one tap after the other.
import { useState } from 'react'
import { createRoot } from 'react-dom/client'
import { whenPainted } from './painted.ts'
import type { TapPage, TapTimes } from './tap-times.ts'

/** Pressed or not, and nothing else. */
function BareButton() {
  const [isPressed, setPressed] = useState(false)
  const place = { position: 'fixed', top: 0, right: 0, width: 48, height: 48 } as const
  return (
    <button
      type="button"
      style={place}
      aria-label="Bare"
      aria-pressed={isPressed}
      onClick={() => setPressed(!isPressed)}
    >
      {isPressed ? 'on' : 'off'}
    </button>
  )
}

createRoot(document.body.appendChild(document.createElement('div'))).render(<BareButton />)

let savedAt: number | null = null
let times: Promise<TapTimes> | null = null

// The engine adds the rows of its ops, and nothing else does; the words at the foot rest on the end of that transaction.
const add = IDBObjectStore.prototype.add
IDBObjectStore.prototype.add = function (...row) {
  this.transaction.addEventListener('complete', () => {
    savedAt = performance.now()
  })
  return add.apply(this, row)
}

const page: TapPage = {
  expect: selector => {
    savedAt = null
    const lifted = new Promise<number>(resolve => {
      window.addEventListener('touchend', ({ timeStamp }) => resolve(timeStamp), { capture: true, once: true })
    })
    const painted = whenPainted(() => document.querySelector(selector) !== null)
    times = Promise.all([lifted, painted]).then(([from, at]) => ({
      painted: at - from,
      saved: savedAt === null ? null : savedAt - from,
    }))
  },
  times: () => times ?? Promise.reject(new Error('no tap is expected')),
}

Object.assign(window, { bench: page })
