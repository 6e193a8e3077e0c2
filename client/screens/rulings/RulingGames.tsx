import type { Outing } from '#core/outing/outing.ts'
import type { GameId } from '#core/values/ids.ts'
import { Tick } from '../../parts/Tick.tsx'
import { say } from '../../words/say-any.ts'
import { gameTitle } from '../board/board-view.ts'

interface Props {
  readonly outing: Outing
  /** Null for all games. */
  readonly games: readonly GameId[] | null
  readonly onGames: (games: readonly GameId[] | null) => void
  readonly fault: string | undefined
}

/** The games that a ruling is for. */
export function RulingGames({ outing, games, onGames, fault }: Props) {
  return (
    <fieldset>
      <legend>{say('ruling-games')}</legend>
      <Tick label={say('ruling-all-games')} isOn={games === null} onChange={isAll => onGames(isAll ? null : [])} />
      {games !== null &&
        outing.games.map(({ id, format }) => (
          <Tick
            key={id}
            label={gameTitle(format)}
            isOn={games.includes(id)}
            onChange={isOn => onGames(isOn ? [...games, id] : games.filter(each => each !== id))}
          />
        ))}
      {fault && <p className="fault">{fault}</p>}
    </fieldset>
  )
}
