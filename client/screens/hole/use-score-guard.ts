import { useEffect, useRef, useState } from 'react'
import { type Touches, watchTouches } from '../../device/touches.ts'
import { answerGuard, type Guard, guardTap, openGuard, type Tap } from './score-guard.ts'

interface ScoreGuard {
  readonly guard: Guard
  readonly put: (tap: Tap) => void
  readonly answer: (isYes: boolean) => void
}

/** A phone in a wet pocket must not score: what it presses waits until somebody says yes. */
export function useScoreGuard(isCurrent: (tap: Tap) => boolean, write: (tap: Tap) => void): ScoreGuard {
  const [guard, setGuard] = useState(openGuard)
  const latest = useRef(guard)
  const touches = useRef<Touches | null>(null)
  useEffect(() => {
    const watched = watchTouches()
    touches.current = watched
    return watched.close
  }, [])
  const change = (next: Guard): void => {
    latest.current = next
    if (next.reason !== guard.reason || next.held !== guard.held) setGuard(next)
  }
  return {
    guard,
    put: tap => {
      const seen = touches.current
      const touch = { at: seen?.clickAt() ?? 0, twoAt: seen?.twoAt() ?? null, isByKey: seen?.isByKey() ?? false }
      const { goesIn, ...next } = guardTap(latest.current, tap, touch, isCurrent(tap))
      change(next)
      if (goesIn) write(tap)
    },
    answer: isYes => {
      const { held } = latest.current
      change(answerGuard(latest.current, isYes))
      if (isYes) for (const tap of held) write(tap)
    },
  }
}
