import { useLocation } from 'wouter'
import type { LogId } from '#core/values/ids.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { useOuting } from '../../../state/use-outing.ts'
import { say } from '../../../words/say.ts'
import { gameTitle } from '../../board/board-view.ts'
import { skinsLeftFacts } from '../../games/game-acts.ts'
import { mayChange } from '../../games/games-view.ts'
import { holePath } from '../../paths.ts'
import type { SkinsAtEnd as Left } from '../skins-left.ts'
import { extraHole, extraHoleFacts, nextExtraHole } from './extra-hole.ts'
import type { MoreProps } from './MoreOnHole.tsx'

interface Props extends MoreProps {
  readonly log: LogId
  readonly left: Left
}

/** Skins that wait after the last hole: the group plays on for them, shares them out, or leaves them. */
export function SkinsAtEnd({ log, outing, group, left: { game, skins } }: Props) {
  const [, go] = useLocation()
  const { isWorking, work } = useWork()
  const next = nextExtraHole(group)
  const isTheirs = mayChange(
    outing,
    useOuting(store => store.me),
    game,
  )
  if (!next || !isTheirs) return null
  const extra = extraHole(group, next.hole)
  const shareOut = () => act('skins shared out', skinsLeftFacts(game, 'shared-out'))
  const playOn = async () => {
    await act('extra hole', [...extraHoleFacts(group, extra), ...skinsLeftFacts(game, 'play-on')])
    go(holePath(log, extra))
  }
  return (
    <section className="notice stack" aria-label={say('skins-end')}>
      <p>{say('skins-end-ask', { game: gameTitle(game.format), n: skins })}</p>
      <div className="pair">
        <button type="button" className="button grow" disabled={isWorking} onClick={() => work(shareOut)}>
          {say('skins-end-share')}
        </button>
        <button type="button" className="button grow" disabled={isWorking} onClick={() => work(playOn)}>
          {say('level-end-on', { hole: extra.hole })}
        </button>
      </div>
    </section>
  )
}
