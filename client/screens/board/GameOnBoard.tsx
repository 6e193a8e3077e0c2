import type { GameGap } from '#core/formats/game-result.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { unreachable } from '#core/values/assert.ts'
import { say } from '../../words/say-any.ts'
import { allowanceWords, gameTitle, gapWords, overWords, unitWord } from './board-view.ts'
import { LineNotes } from './LineNotes.tsx'
import { MatchOnBoard } from './MatchOnBoard.tsx'
import { PartsOnBoard } from './PartsOnBoard.tsx'
import { SharesOnBoard } from './SharesOnBoard.tsx'
import { TiesOnBoard } from './TiesOnBoard.tsx'
import { TotalOnBoard } from './TotalOnBoard.tsx'

interface Props {
  readonly outing: Outing
  readonly results: Results
  readonly game: Game
}

/** One game: its lines, its match, or why it waits. */
export function GameOnBoard({ outing, results, game }: Props) {
  const result = results.games.get(game.id)
  const title = gameTitle(game.format)
  const allowance = allowanceWords(game)
  const over = overWords(outing, game)
  return (
    <section className="board-game" aria-label={title}>
      <h2 className="board-title">
        {title}
        {allowance && <small>{allowance}</small>}
        {over && <small>{over}</small>}
        <small className="unit">{result && unitWord(result)}</small>
      </h2>
      {result && <Lines outing={outing} results={results} game={game} result={result} />}
    </section>
  )
}

type Result = NonNullable<ReturnType<Results['games']['get']>>

function Lines({ outing, results, game, result }: Props & { readonly result: Result }) {
  switch (result.kind) {
    case 'gap':
      return <Gaps outing={outing} words={say('board-waits', { game: gameTitle(result.format) })} gaps={result.gaps} />
    case 'total':
      return (
        <>
          <TotalOnBoard outing={outing} results={results} lines={result.lines} unit={result.unit} />
          <LineNotes outing={outing} lines={result.lines} />
          <TiesOnBoard outing={outing} ties={result.ties} />
          {/* One ball's gap keeps its own line from the board, and is said. */}
          {result.gaps.length > 0 && <Gaps outing={outing} words={say('board-left-out')} gaps={result.gaps} />}
        </>
      )
    case 'match':
      return <MatchOnBoard outing={outing} matches={result.matches} />
    case 'shares':
      return (
        <>
          <SharesOnBoard outing={outing} game={game} result={result} />
          {result.gaps.length > 0 && <Gaps outing={outing} words={say('board-left-out')} gaps={result.gaps} />}
        </>
      )
    case 'parts':
      return <PartsOnBoard outing={outing} game={game} result={result} />
    default:
      return unreachable(result)
  }
}

interface GapsProps {
  readonly outing: Outing
  readonly words: string
  readonly gaps: readonly GameGap[]
}

function Gaps({ outing, words, gaps }: GapsProps) {
  return (
    <div className="notice">
      <p>{words}</p>
      <ul>
        {gaps.map(gap => (
          <li key={`${gap.code} ${gap.ball} ${gap.setting}`}>{gapWords(outing, gap)}</li>
        ))}
      </ul>
    </div>
  )
}
