import { useState } from 'react'
import { holeKey } from '#core/card/score.ts'
import type { MatchSides } from '#core/formats/game-result.ts'
import type { Game } from '#core/outing/outing.ts'
import type { GameId } from '#core/values/ids.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { sideName } from '../../../parts/side-name.ts'
import { say } from '../../../words/say-any.ts'
import { gameTitle } from '../../board/board-view.ts'
import { AgreeHole } from './AgreeHole.tsx'
import { AgreeMatch } from './AgreeMatch.tsx'
import { Concede } from './Concede.tsx'
import type { MoreProps } from './MoreOnHole.tsx'
import { matchesAt } from './matches-at.ts'
import { OpenPress } from './OpenPress.tsx'

/** What the sections about one match work on. */
export interface MatchProps extends MoreProps {
  readonly game: Game
  readonly sides: MatchSides
  /** True where the game has more matches than this one. */
  readonly isOneOfSeveral: boolean
}

/** Which game and which match, then what its sides say. */
export function MatchMore(props: MoreProps) {
  const { outing, results, group, at } = props
  const [chosenGame, setGame] = useState<GameId | null>(null)
  const [chosenMatch, setMatch] = useState(0)
  const games = outing.games.flatMap(game => {
    const matches = matchesAt(results.games.get(game.id), holeKey(at)).filter(sides =>
      sides.flat().some(ball => group.balls.includes(ball)),
    )
    return matches.length === 0 ? [] : [{ game, matches }]
  })
  const shown = games.find(({ game }) => game.id === chosenGame) ?? games[0]
  if (!shown) return null
  const { game, matches } = shown
  const place = Math.min(chosenMatch, matches.length - 1)
  const sides = matches[place]
  if (!sides) return null
  const match: MatchProps = { ...props, game, sides, isOneOfSeveral: matches.length > 1 }
  const key = `${game.id} ${place} ${holeKey(at)}`
  return (
    <>
      {games.length > 1 && (
        <Choice
          label={say('note-game')}
          value={game.id}
          options={games.map(each => ({ value: each.game.id, text: gameTitle(each.game.format) }))}
          onValue={value => {
            setGame(value as GameId)
            setMatch(0)
          }}
        />
      )}
      {games.length === 1 && <p className="quiet">{gameTitle(game.format)}</p>}
      {matches.length > 1 && (
        <Choice
          label={say('note-match')}
          value={String(place)}
          options={matches.map(([first, second], each) => ({
            value: String(each),
            text: say('versus', { first: sideName(outing, first), second: sideName(outing, second) }),
          }))}
          onValue={value => setMatch(Number(value))}
        />
      )}
      <Concede key={`concede ${key}`} {...match} />
      <OpenPress key={`press ${key}`} {...match} />
      <AgreeHole key={`hole ${key}`} {...match} />
      <AgreeMatch key={`match ${key}`} {...match} />
    </>
  )
}
