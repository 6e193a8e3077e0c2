import { useState } from 'react'
import { Link } from 'wouter'
import type { GameId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { useOuting } from '../../state/use-outing.ts'
import { useResults } from '../../state/use-results.ts'
import { say } from '../../words/say-any.ts'
import { TwosSection } from '../groups/TwosSection.tsx'
import { OutingPage } from '../outing/OutingPage.tsx'
import { gamesPath, groupsPath } from '../paths.ts'
import { gameTitle } from './board-view.ts'
import { GameOnBoard } from './GameOnBoard.tsx'

/** The standings of every game, live. */
export function BoardScreen() {
  const outing = useOuting(store => store.outing)
  const log = useOuting(store => store.log)
  const results = useResults()
  const [shown, setShown] = useState<GameId | ''>('')
  if (!outing || !results) return null
  const games = outing.games.filter(({ id }) => results.games.has(id))
  const options = games.map(({ id, format }) => ({ value: id, text: gameTitle(format) }))
  return (
    <OutingPage tab="board">
      <h1>{say('board-title')}</h1>
      {games.length === 0 && <p>{say('board-empty')}</p>}
      {games.length > 1 && (
        <Choice
          label={say('board-which')}
          hasLabel={false}
          value={shown}
          options={[{ value: '', text: say('board-all') }, ...options]}
          onValue={value => setShown(value as GameId | '')}
        />
      )}
      {games
        .filter(({ id }) => shown === '' || id === shown)
        .map(game => (
          <GameOnBoard key={game.id} outing={outing} results={results} game={game} />
        ))}
      <TwosSection outing={outing} />
      {log && (
        <Link className="button" href={groupsPath(log)}>
          {say('groups-open')}
        </Link>
      )}
      {log && (
        <Link className="button" href={gamesPath(log)}>
          {say('games-change')}
        </Link>
      )}
    </OutingPage>
  )
}
