import { useEffect, useId, useRef, useState } from 'react'
import type { Outing } from '#core/outing/outing.ts'
import { formatList, formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'
import type { Guard, Tap } from './score-guard.ts'

interface Props {
  readonly guard: Guard
  readonly outing: Outing
  /** The hole that the group's scores say it is on; null once all are in. */
  readonly inPlay: number | null
  readonly onAnswer: (isYes: boolean) => void
}

/** The buttons rest for a moment, so that a burst of taps cannot answer its own question. */
const restMs = 400

/** Keys that were held, with the question whether they were meant. */
export function HeldScores({ guard: { held, reason }, outing, inPlay, onAnswer }: Props) {
  const id = useId()
  const box = useRef<HTMLDivElement>(null)
  const [isResting, setResting] = useState(true)
  useEffect(() => {
    const before = document.activeElement
    box.current?.focus()
    const timer = setTimeout(() => setResting(false), restMs)
    return () => {
      clearTimeout(timer)
      // Back to the key that was pressed.
      if (before instanceof HTMLElement) before.focus()
    }
  }, [])
  const [first] = held
  if (!first) return null
  const list = formatList(held.map(tap => wordsOf(outing, tap)))
  const question =
    reason === 'burst'
      ? say('held-burst', { list })
      : say(inPlay === null ? 'held-all-in' : 'held-other', { list, hole: first.hole, now: inPlay ?? '' })
  return (
    <div ref={box} className="held" role="alertdialog" aria-labelledby={id} tabIndex={-1}>
      <p id={id}>{question}</p>
      <div className="pair">
        <button type="button" className="button grow" disabled={isResting} onClick={() => onAnswer(false)}>
          {say('held-no')}
        </button>
        <button type="button" className="button loud grow" disabled={isResting} onClick={() => onAnswer(true)}>
          {say('held-yes')}
        </button>
      </div>
    </div>
  )
}

const wordsOf = (outing: Outing, { ball, score }: Tap): string =>
  say('score-key', {
    player: outing.balls.get(ball)?.name ?? ball,
    score: score === null ? say('clear') : formatScore(score),
  })
