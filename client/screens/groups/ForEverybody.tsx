import { defaultGameMethods, gameFacts } from '#core/outing/acts.ts'
import { gamesForAll } from '#core/outing/acts-roll-up.ts'
import type { Outing } from '#core/outing/outing.ts'
import { createId } from '../../device/random-ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { newGameId } from '../games/games-view.ts'

/** Where there is none yet, one tap makes a Stableford of everybody beside the games of the groups. */
export function ForEverybody({ outing }: { readonly outing: Outing }) {
  const state = useOuting(store => store.state)
  const { isWorking, work } = useWork()
  const balls = [...outing.balls.values()].filter(({ players }) => players.length === 1).map(({ id }) => id)
  const isThere = gamesForAll(outing).some(({ format }) => format === 'stableford')
  if (outing.groups.size < 2 || isThere || balls.length < 2) return null
  const add = (): void => {
    const id = newGameId(state, 'stableford', createId)
    const methods = defaultGameMethods('stableford')
    work(() =>
      act(
        'game added',
        gameFacts({ id, group: null, format: 'stableford', sides: balls.map(ball => [ball]), methods }),
      ),
    )
  }
  return (
    <section className="section" aria-label={say('groups-all-title')}>
      <h2>{say('groups-all-title')}</h2>
      <p className="quiet">{say('groups-all-hint')}</p>
      <button type="button" className="button" disabled={isWorking} onClick={add}>
        {say('groups-all-add')}
      </button>
    </section>
  )
}
