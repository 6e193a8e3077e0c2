import { useCallback, useState } from 'react'
import { useAnswer } from '../../parts/use-answer.ts'
import { handOverCodes, handOverText } from '../../state/handing-over.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { HandOverCodes } from './HandOverCodes.tsx'

/** Everything that this phone holds, for another phone with no signal: as codes, or as a file. */
export function HandOver() {
  const [isShown, setShown] = useState(false)
  return (
    <section className="section" aria-label={say('hand-over-title')}>
      <h2>{say('hand-over-title')}</h2>
      <p className="quiet">{say('hand-over-hint')}</p>
      <div className="pair">
        <button type="button" className="button grow" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
          {say(isShown ? 'hand-over-hide' : 'hand-over-show')}
        </button>
        <button type="button" className="button grow" onClick={saveFile}>
          {say('hand-over-file')}
        </button>
      </div>
      {isShown && <Codes />}
    </section>
  )
}

/** Made again when something comes in while they are shown. */
function Codes() {
  const state = useOuting(store => store.state)
  const codes = useAnswer(useCallback(async () => (state === null ? null : handOverCodes()), [state]))
  if (codes === null) return <p role="status">{say('working')}</p>
  return <HandOverCodes codes={codes} />
}

function saveFile(): void {
  const url = URL.createObjectURL(new Blob([handOverText()], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = url
  link.download = 'hand-over.json'
  link.click()
  URL.revokeObjectURL(url)
}
