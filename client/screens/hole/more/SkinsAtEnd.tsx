import type { LogId } from '#core/values/ids.ts'
import { useOuting } from '../../../state/use-outing.ts'
import { say } from '../../../words/say-any.ts'
import { gameTitle } from '../../board/board-view.ts'
import { skinsLeftFacts } from '../../games/game-acts.ts'
import { mayChange } from '../../games/games-view.ts'
import type { SkinsAtEnd as Left } from '../skins-left.ts'
import type { MoreProps } from './MoreOnHole.tsx'
import { PlayOnOr } from './PlayOnOr.tsx'

interface Props extends Pick<MoreProps, 'outing' | 'group'> {
  readonly log: LogId
  readonly left: Left
}

/** Skins that wait after the last hole: the group plays on for them, shares them out, or leaves them. */
export function SkinsAtEnd({ log, outing, group, left: { game, skins } }: Props) {
  const me = useOuting(store => store.me)
  if (!mayChange(outing, me, game)) return null
  return (
    <PlayOnOr
      log={log}
      group={group}
      label={say('skins-end')}
      ask={say('skins-end-ask', { game: gameTitle(game.format), n: skins })}
      end={{ text: say('skins-end-share'), act: 'skins shared out', facts: skinsLeftFacts(game, 'shared-out') }}
      withHole={skinsLeftFacts(game, 'play-on')}
    />
  )
}
