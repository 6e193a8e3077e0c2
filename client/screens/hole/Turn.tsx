import type { ReactNode } from 'react'
import { useLocation } from 'wouter'
import type { PlayedHole } from '#core/card/score.ts'
import type { LogId } from '#core/values/ids.ts'
import { useWaking } from '../../parts/use-waking.ts'
import { say } from '../../words/say.ts'
import { finishPath, holePath, resetPath } from '../paths.ts'

interface Props {
  readonly log: LogId
  readonly holes: readonly PlayedHole[]
  readonly at: PlayedHole
  /** The three that this hole has just closed: its reset comes before the next hole. */
  readonly closedThree: number | null
  /** True once the balls scored here are on the hole behind this one. */
  readonly isBehind: boolean
  /** True once every score of the group is in. */
  readonly isOver: boolean
  /** What lies between the two. */
  readonly children?: ReactNode
}

/** To the hole before and the hole after, in order of play. */
export function Turn({ log, holes, at, closedThree, isBehind, isOver, children }: Props) {
  const [, go] = useLocation()
  const place = holes.findIndex(({ hole, lap }) => hole === at.hole && lap === at.lap)
  const [before, after] = [holes[place - 1], holes[place + 1]]
  const goOn = (): void => {
    if (after) go(closedThree === null ? holePath(log, after) : resetPath(log, closedThree))
  }
  // A phone that comes out of the pocket shows the hole that its player stands on.
  useWaking(() => {
    if (isBehind) goOn()
  })
  return (
    <div className="turn">
      <button type="button" className="button" disabled={!before} onClick={() => before && go(holePath(log, before))}>
        {say('previous-hole')}
      </button>
      {children}
      {after ? (
        <button type="button" className="button" onClick={goOn}>
          {say('next-hole')}
        </button>
      ) : (
        <button type="button" className={isOver ? 'button loud' : 'button'} onClick={() => go(finishPath(log))}>
          {say('finish-round')}
        </button>
      )}
    </div>
  )
}
