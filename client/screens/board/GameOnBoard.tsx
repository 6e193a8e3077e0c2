import type { GameGap } from '#core/formats/game-result.ts'
import { formatTable } from '#core/formats/table.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { unreachable } from '#core/values/assert.ts'
import { say } from '../../words/say.ts'
import { gameTitle, gapWords } from './board-view.ts'
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
  const { allowancePercent } = game.methods
  const hasAllowance =
    allowancePercent !== null && game.format !== null && formatTable[game.format].settings.includes('allowancePercent')
  const unit = result && unitWord(result)
  return (
    <section className="board-game" aria-label={title}>
      <h2 className="board-title">
        {title}
        {hasAllowance && <small>{say('board-allowance', { percent: allowancePercent ?? 0 })}</small>}
        {game.holes && <small>{overWords(outing, game)}</small>}
        <small className="unit">{unit}</small>
      </h2>
      {result && <Lines outing={outing} results={results} game={game} result={result} />}
    </section>
  )
}

/** "holes 10 to 18", by the order of play of the game's first group. */
function overWords(outing: Outing, { sides, holes }: Game): string {
  const ball = outing.balls.get(sides?.flat()[0] ?? ('' as never))
  const round = outing.groups.get(ball?.group ?? ('' as never))?.round ?? []
  return say('board-over', {
    from: holes?.from?.[0] ?? round[0]?.hole ?? 1,
    to: holes?.to?.[0] ?? round.at(-1)?.hole ?? outing.length,
  })
}

/** What the figures on the right are. */
function unitWord(result: Result): string {
  if (result.kind === 'total' || result.kind === 'shares')
    return say(result.unit === 'skins' ? 'short-skins' : result.unit)
  return result.kind === 'parts' ? say('points') : ''
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
