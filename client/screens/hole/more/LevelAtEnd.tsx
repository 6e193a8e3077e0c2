import type { MatchLine } from '#core/formats/game-result.ts'
import { agreeResultFacts } from '#core/outing/acts-match.ts'
import type { LogId } from '#core/values/ids.ts'
import { sideName } from '../../../parts/side-name.ts'
import { say } from '../../../words/say-any.ts'
import type { LevelMatch } from '../level-at-end.ts'
import type { MoreProps } from './MoreOnHole.tsx'
import { PlayOnOr } from './PlayOnOr.tsx'

interface Props extends Pick<MoreProps, 'outing' | 'group'> {
  readonly log: LogId
  readonly level: LevelMatch
}

/** A match level after the last hole: the sides say whether it is halved or goes on. Rules of Golf 2023, rule 3.2a(4). */
export function LevelAtEnd({ log, outing, group, level: { game, match } }: Props) {
  const between = firstOfEach(match)
  if (!between) return null
  const [first = '', second = ''] = match.sides.map(side => sideName(outing, side))
  const halved = agreeResultFacts(outing, { game, between, won: null, by: 0, left: 0 })
  return (
    <PlayOnOr
      log={log}
      group={group}
      label={say('level-end')}
      ask={say('level-end-ask', { match: say('versus', { first, second }) })}
      end={{ text: say('level-end-halved'), act: 'match agreed', facts: halved }}
    />
  )
}

function firstOfEach({ sides: [[first], [second]] }: MatchLine) {
  return first && second ? ([first, second] as const) : null
}
