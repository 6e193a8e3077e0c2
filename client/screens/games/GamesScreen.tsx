import { useState } from 'react'
import type { GroupId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { GameOfOuting } from './GameOfOuting.tsx'
import { ballsInPlay, gamesIn, scopesOf } from './games-view.ts'
import { NewGame } from './NewGame.tsx'

/** The games of a running outing: change one, take one away, add one. */
export function GamesScreen() {
  const outing = useOuting(store => store.outing)
  const me = useOuting(store => store.me)
  const [chosen, setChosen] = useState<GroupId | null>(null)
  if (!outing) return null
  const scopes = scopesOf(outing, me)
  const scope = scopes.includes(chosen) ? chosen : (scopes[0] ?? null)
  const games = gamesIn(outing, scope)
  const others = outing.games.filter(game => !games.includes(game))
  const inPlay = ballsInPlay(outing, scope)
  return (
    <OutingPage tab="board">
      <h1>{say('games-title')}</h1>
      {scopes.length === 0 && <p className="notice">{say('games-no-rights')}</p>}
      {scopes.length > 1 && (
        <Choice
          label={say('games-of')}
          value={scope ?? ''}
          options={scopes.map(each => ({
            value: each ?? '',
            text: each === null ? say('games-of-all') : (outing.groups.get(each)?.name ?? each),
          }))}
          onValue={value => setChosen(value === '' ? null : (value as GroupId))}
        />
      )}
      {games.length === 0 && scopes.length > 0 && <p>{say('games-none')}</p>}
      {games.map(game => (
        <GameOfOuting key={game.id} game={game} inPlay={inPlay} canChange={scopes.length > 0} />
      ))}
      {scopes.length > 0 && <NewGame key={scope} scope={scope} inPlay={inPlay} taken={games} />}
      {others.length > 0 && me?.role === 'scorer' && <p className="quiet">{say('games-not-here')}</p>}
      {scopes.length === 0 || me?.role === 'scorer'
        ? others.map(game => <GameOfOuting key={game.id} game={game} inPlay={inPlay} canChange={false} />)
        : null}
    </OutingPage>
  )
}
