import { useLocation } from 'wouter'
import type { PlayedHole } from '#core/card/score.ts'
import type { LogId } from '#core/values/ids.ts'
import { say } from '../../words/say.ts'
import { holePath, resetPath, tabPath } from '../paths.ts'

interface Props {
  readonly log: LogId
  readonly holes: readonly PlayedHole[]
  readonly at: PlayedHole
  /** The three that this hole has just closed: its reset comes before the next hole. */
  readonly closedThree: number | null
}

/** To the hole before and the hole after, in order of play. */
export function Turn({ log, holes, at, closedThree }: Props) {
  const [, go] = useLocation()
  const place = holes.findIndex(({ hole, lap }) => hole === at.hole && lap === at.lap)
  const [before, after] = [holes[place - 1], holes[place + 1]]
  return (
    <div className="turn">
      <button type="button" className="button" disabled={!before} onClick={() => before && go(holePath(log, before))}>
        {say('previous-hole')}
      </button>
      {after ? (
        <button
          type="button"
          className="button"
          onClick={() => go(closedThree === null ? holePath(log, after) : resetPath(log, closedThree))}
        >
          {say('next-hole')}
        </button>
      ) : (
        <button type="button" className="button" onClick={() => go(tabPath(log, 'card'))}>
          {say('to-card')}
        </button>
      )}
    </div>
  )
}
