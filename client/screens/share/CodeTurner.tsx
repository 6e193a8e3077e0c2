import { useEffect, useRef, useState } from 'react'
import { say } from '../../words/say-any.ts'
import { QrCode } from './QrCode.tsx'

/** Long enough for a camera to read one. */
const turnMs = 1_200

/** The codes one at a time, turned by hand or by themselves. */
export function CodeTurner({ codes }: { readonly codes: readonly string[] }) {
  const [turned, setTurned] = useState(0)
  const [isRunning, setRunning] = useState(false)
  const of = codes.length
  const place = turned % of
  useEffect(() => {
    if (!isRunning) return
    const timer = setInterval(() => setTurned(now => now + 1), turnMs)
    return () => clearInterval(timer)
  }, [isRunning])
  const turn = (by: number): void => {
    setRunning(false)
    setTurned(place + by + of)
  }
  const box = useRef<HTMLDivElement>(null)
  // The foot of the page may cover no part of a code.
  useEffect(() => {
    void box.current?.scrollIntoView({ block: 'center' })
  }, [])
  const name = say('hand-over-code', { n: place + 1, of })
  return (
    <>
      <div ref={box}>
        <QrCode text={codes[place] ?? ''} label={name} correction="L" />
      </div>
      <p className="turned" aria-live={isRunning ? 'off' : 'polite'}>
        {name}
      </p>
      {of > 1 && (
        <div className="pair">
          <button type="button" className="button grow" onClick={() => turn(-1)}>
            {say('hand-over-back')}
          </button>
          <button type="button" className="button grow" onClick={() => turn(1)}>
            {say('hand-over-next')}
          </button>
          <button type="button" className="button grow" onClick={() => setRunning(!isRunning)}>
            {say(isRunning ? 'hand-over-hold' : 'hand-over-run')}
          </button>
        </div>
      )}
    </>
  )
}
