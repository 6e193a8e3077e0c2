import { Link } from 'wouter'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { say } from '../../../words/say.ts'
import { aimsPath } from '../../paths.ts'
import { useAims } from './use-aims.ts'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly ball: BallId | null
}

/** One closed line: what is private stays behind a tap on a phone that others look at. */
export function AimsLine({ log, outing, ball }: Props) {
  const [aims] = useAims(log, ball)
  const isBegun = ball !== null && (outing.cards.get(ball)?.scores.size ?? 0) > 0
  const state = aims === null ? (isBegun ? 'aims-none' : 'aims-set') : 'aims-open'
  return (
    <Link className="private-line" href={aimsPath(log)}>
      <span>{say('aims-title')}</span>
      <span className="quiet">{say(state)}</span>
    </Link>
  )
}
