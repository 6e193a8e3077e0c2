import { useLocation } from 'wouter'
import type { MatchLine } from '#core/formats/game-result.ts'
import { agreeResultFacts } from '#core/outing/acts-match.ts'
import type { LogId } from '#core/values/ids.ts'
import { sideName } from '../../../parts/match-view.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say.ts'
import { holePath } from '../../paths.ts'
import type { LevelMatch } from '../level-at-end.ts'
import { extraHole, extraHoleFacts, nextExtraHole } from './extra-hole.ts'
import type { MoreProps } from './MoreOnHole.tsx'

interface Props extends MoreProps {
  readonly log: LogId
  readonly level: LevelMatch
}

/** A match level after the last hole: the sides say whether it is halved or goes on. Rules of Golf 2023, rule 3.2a(4). */
export function LevelAtEnd({ log, outing, group, level: { game, match } }: Props) {
  const [, go] = useLocation()
  const { isWorking, work } = useWork()
  const next = nextExtraHole(group)
  const between = firstOfEach(match)
  if (!next || !between) return null
  const extra = extraHole(group, next.hole)
  const [first = '', second = ''] = match.sides.map(side => sideName(outing, side))
  const halve = () => act('match agreed', agreeResultFacts(outing, { game, between, won: null, by: 0, left: 0 }))
  const playOn = async () => {
    await act('extra hole', extraHoleFacts(group, extra))
    go(holePath(log, extra))
  }
  return (
    <section className="notice stack" aria-label={say('level-end')}>
      <p>{say('level-end-ask', { match: say('versus', { first, second }) })}</p>
      <div className="pair">
        <button type="button" className="button grow" disabled={isWorking} onClick={() => work(halve)}>
          {say('level-end-halved')}
        </button>
        <button type="button" className="button grow" disabled={isWorking} onClick={() => work(playOn)}>
          {say('level-end-on', { hole: extra.hole })}
        </button>
      </div>
    </section>
  )
}

function firstOfEach({ sides: [[first], [second]] }: MatchLine) {
  return first && second ? ([first, second] as const) : null
}
