import type { PartLine, PartsResult } from '#core/formats/parts-result.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { partTitle } from '../../parts/part-title.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList, formatShare } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { holesWords } from '../card/card-view.ts'
import { tallyWords } from '../hole/stands.ts'
import { MatchOnBoard } from './MatchOnBoard.tsx'
import { ShareLines } from './SharesOnBoard.tsx'

interface Props {
  readonly outing: Outing
  readonly game: Game
  readonly result: PartsResult
}

/** The points of the game, and each of its parts. */
export function PartsOnBoard({ outing, game, result }: Props) {
  const two = result.unsettled.map(key => key.split('/')[0] ?? '')
  return (
    <>
      <ShareLines outing={outing} lines={result.lines} />
      {two.length > 0 && <p>{say('board-two-scores', { hole: formatList(two) })}</p>}
      {result.parts.map(part => (
        <section key={`${part.name} ${part.number}`} className="board-part" aria-label={partTitle(part)}>
          <h3>
            {partTitle(part)} <small>{holesWords(part.holes.map(holeOf))}</small>
          </h3>
          {part.match && <MatchOnBoard outing={outing} matches={[part.match]} />}
          {part.by && <p className="quiet">{say('part-pressed', { side: sideName(outing, sideOf(game, part.by)) })}</p>}
          {part.tallies.length > 0 && <p>{tallyWords(outing, part.tallies)}</p>}
          {part.shares && <p className="quiet">{partPoints(outing, game, part.shares)}</p>}
        </section>
      ))}
    </>
  )
}

const holeOf = (key: string): number => Number(key.split('/')[0])

/** What the part gave, once it is decided: "Alder 1, Birch 0". */
function partPoints(outing: Outing, { sides }: Game, shares: NonNullable<PartLine['shares']>): string {
  const won = shares.map((share, place) =>
    say('side-points', { side: sideName(outing, sides?.[place] ?? []), n: formatShare(share) }),
  )
  return say('part-points', { points: formatList(won) })
}

const sideOf = ({ sides }: Game, ball: BallId): readonly BallId[] => sides?.find(side => side.includes(ball)) ?? [ball]
