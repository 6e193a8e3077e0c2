import type { ShareLine } from '#core/formats/shares.ts'
import type { SharesResult } from '#core/formats/shares-result.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList, formatShare } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { placeWords } from './board-view.ts'
import { Details } from './Details.tsx'
import { shareWords } from './share-words.ts'

interface Props {
  readonly outing: Outing
  readonly game: Game
  readonly result: SharesResult
}

/** What each side has won so far, and what nobody has. */
export function SharesOnBoard({ outing, game, result }: Props) {
  const two = result.unsettled.map(key => key.split('/')[0] ?? '')
  const counted = new Set(result.lines.map(({ side }) => side.join()))
  const sides = (game.sides ?? []).filter(side => counted.has(side.join()))
  return (
    <>
      <ShareLines outing={outing} lines={result.lines} />
      {result.carried !== null && result.carried > 0 && <p>{say('skins-carried', { n: result.carried })}</p>}
      {result.unclaimed > 0 && <p>{say('skins-unclaimed', { n: result.unclaimed })}</p>}
      {result.sharedOut > 0 && <p>{say('skins-shared-out', { n: result.sharedOut })}</p>}
      {two.length > 0 && <p>{say('board-two-scores', { hole: formatList(two) })}</p>}
      <Details title={say('hole-by-hole')} lines={shareWords(outing, sides, result)} />
    </>
  )
}

export function ShareLines({ outing, lines }: { readonly outing: Outing; readonly lines: readonly ShareLine[] }) {
  return (
    <ol>
      {lines.map(line => (
        <li key={line.side.join()} className="board-line">
          <span className="board-place">{placeWords(line)} </span>
          <p className="board-who">
            <b>{sideName(outing, line.side)}</b>
          </p>
          <span className="board-total"> {formatShare(line.total)}</span>
        </li>
      ))}
    </ol>
  )
}
