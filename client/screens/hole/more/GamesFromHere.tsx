import { useState } from 'react'
import type { PlayedHole } from '#core/card/score.ts'
import { gameFacts } from '#core/outing/acts.ts'
import { gameHolesFacts } from '#core/outing/game-holes.ts'
import type { Game } from '#core/outing/outing.ts'
import type { GameId } from '#core/values/ids.ts'
import { createId } from '../../../device/random-ids.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { SecondTap } from '../../../parts/SecondTap.tsx'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { useOuting } from '../../../state/use-outing.ts'
import { say } from '../../../words/say-any.ts'
import { gameTitle } from '../../board/board-view.ts'
import { asWritten } from '../../games/game-acts.ts'
import { ballsInPlay, gamesIn, newGameId, scopesOf } from '../../games/games-view.ts'
import { type Sides, sidesWords, waysToSide } from '../../games/sides.ts'
import { holesOf } from '../hole-view.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** A game stops after this hole, or goes on from the next one with other sides; no hole behind is touched. */
export function GamesFromHere(props: MoreProps) {
  const me = useOuting(store => store.me)
  const [chosen, setChosen] = useState<GameId | null>(null)
  const { outing } = props
  const games = scopesOf(outing, me)
    .flatMap(scope => gamesIn(outing, scope))
    .filter(({ format, holes }) => format !== null && (holes?.to ?? null) === null)
  const shown = games.find(({ id }) => id === chosen) ?? games[0]
  if (!shown) return null
  return (
    <section className="section" aria-label={say('from-here-title')}>
      <h2>{say('from-here-title')}</h2>
      <p className="quiet">{say('from-here-hint')}</p>
      <Choice
        label={say('from-here-game')}
        value={shown.id}
        options={games.map(({ id, format }) => ({ value: id, text: gameTitle(format) }))}
        onValue={value => setChosen(value as GameId)}
      />
      <OneGame key={shown.id} game={shown} {...props} />
    </section>
  )
}

function OneGame({ outing, group, at, game }: MoreProps & { readonly game: Game }) {
  const { work } = useWork()
  const written = asWritten(game)
  if (written === null) return null
  const holes = holesOf(group)
  const next = holes[holes.findIndex(({ hole, lap }) => hole === at.hole && lap === at.lap) + 1]
  const from = game.holes?.from ?? null
  const stop = gameHolesFacts({
    game: written.id,
    group: written.group,
    from: from && { hole: from[0], lap: from[1] },
    to: at,
  })
  const title = gameTitle(game.format)
  return (
    <>
      <SecondTap
        label={say('from-here-stop', { game: title, hole: at.hole })}
        sure={say('from-here-stop-sure')}
        warning={say('from-here-stop-warning', { game: title, hole: at.hole })}
        onSure={() => work(() => act('game stopped', stop))}
      />
      {next && <OtherSides outing={outing} game={game} next={next} stop={stop} />}
    </>
  )
}

interface OtherProps extends Pick<MoreProps, 'outing'> {
  readonly game: Game
  readonly next: PlayedHole
  readonly stop: ReturnType<typeof gameHolesFacts>
}

/** The same game from the next hole on, with sides that it has not had. */
function OtherSides({ outing, game, next, stop }: OtherProps) {
  const state = useOuting(store => store.state)
  const { work } = useWork()
  const [way, setWay] = useState(0)
  const written = asWritten(game)
  const { balls } = ballsInPlay(outing, game.group)
  const stood = JSON.stringify(ordered(game.sides ?? []))
  const ways = written ? waysToSide(written.format, balls).filter(each => JSON.stringify(ordered(each)) !== stood) : []
  const sides = ways[way] ?? ways[0]
  if (!written || !sides) return null
  const change = async (): Promise<void> => {
    const id = newGameId(state, written.format, createId)
    const again = gameFacts({ ...written, id, sides: sides as typeof written.sides })
    const over = gameHolesFacts({ game: id, group: written.group, from: next, to: null })
    await act('partners changed', [...stop, ...again, ...over])
  }
  return (
    <>
      <Choice
        label={say('from-here-sides', { hole: next.hole })}
        value={String(way)}
        options={ways.map((each, place) => ({ value: String(place), text: sidesWords(balls, each) }))}
        onValue={value => setWay(Number(value))}
      />
      <SecondTap
        label={say('from-here-change', { hole: next.hole })}
        sure={say('from-here-change-sure')}
        warning={say('from-here-change-warning', { game: gameTitle(game.format), hole: next.hole })}
        onSure={() => work(change)}
      />
    </>
  )
}

/** Sides are the same whichever way round they are told. */
const ordered = (sides: Sides): Sides =>
  sides.map(side => [...side].sort()).sort((a, b) => (a.join() < b.join() ? -1 : 1))
