import { useState } from 'react'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { remember, remembered } from '../../device/remembered.ts'
import type { Me } from '../../state/outing-store.ts'

/** Whose scores go in on this phone, and which ball is its owner's. */
export interface Whose {
  readonly mode: 'all' | 'mine'
  readonly ball: BallId | null
  /** The ball whose marker's record this phone keeps. */
  readonly marks: BallId | null
}

function parseWhose(text: string | null): Whose | null {
  const [mode, ball, marks] = (text ?? '').split(' ')
  if (mode !== 'all' && mode !== 'mine') return null
  return { mode, ball: ball ? (ball as BallId) : null, marks: marks ? (marks as BallId) : null }
}

export const rememberWhose = (log: LogId, { mode, ball, marks }: Whose): void =>
  remember(`whose-${log}`, `${mode} ${ball ?? ''} ${marks ?? ''}`)

/** The ball of the player whose name this phone gave. */
function ballByName(outing: Outing | null, me: Me | null): BallId | null {
  const found = [...(outing?.balls.values() ?? [])].find(
    ({ players }) => players.length === 1 && players.some(player => outing?.players.get(player)?.name === me?.label),
  )
  return found?.id ?? null
}

/** The choice made on this phone for this outing, kept by it. */
export function useWhose(log: LogId | null, outing: Outing | null, me: Me | null): [Whose, (whose: Whose) => void] {
  const [chosen, setChosen] = useState(() => parseWhose(remembered(`whose-${log}`)))
  const ball = chosen?.ball ?? ballByName(outing, me)
  const choose = (whose: Whose): void => {
    if (log) rememberWhose(log, whose)
    setChosen(whose)
  }
  return [{ mode: chosen?.mode ?? 'all', ball, marks: chosen?.marks ?? null }, choose]
}

/**
 * True on a phone that scores for others, or for nobody known: what is private stays behind a tap. Rules of Golf 2023,
 * rule 10.2: advice is for the player and the caddie alone.
 */
export function isForOthersToo({ mode, ball, marks }: Whose, { balls }: Group): boolean {
  if (ball === null || !balls.includes(ball) || marks !== null) return true
  return mode === 'all' && balls.length > 1
}
