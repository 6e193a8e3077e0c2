import type { Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { say } from '../../words/say-any.ts'
import { type StrokesLine, type StrokesOfGame, strokesOfGames } from './strokes-view.ts'

interface Props {
  readonly outing: Outing
  readonly results: Results
}

/** Who receives how many in every game, at which holes, and why. */
export function StrokesList({ outing, results }: Props) {
  return strokesOfGames(outing, results).map(game => <StrokesGame key={game.id} game={game} />)
}

function StrokesGame({ game: { title, lines, isGross, courseHandicap } }: { readonly game: StrokesOfGame }) {
  return (
    <section className="strokes-game" aria-label={say('strokes-of', { game: title })}>
      <h3>{title}</h3>
      {isGross && <p className="quiet">{say('game-no-handicaps')}</p>}
      {courseHandicap !== '' && <p className="quiet">{courseHandicap}</p>}
      <ul className="lines">
        {lines.map(line => (
          <Line key={line.ball} line={line} />
        ))}
      </ul>
    </section>
  )
}

function Line({ line: { name, strokes, holes, why } }: { readonly line: StrokesLine }) {
  return (
    <li>
      <p className="strokes-who">
        <b>{name}</b> <b className="strokes-n">{strokes < 0 ? `+${-strokes}` : strokes}</b>
      </p>
      {holes !== '' && <p>{holes}</p>}
      <p className="quiet">{why}</p>
    </li>
  )
}
