import type { MatchLine } from '#core/formats/game-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import { MatchStrip } from '../../parts/MatchStrip.tsx'
import { aheadIn, matchLineWords, standOf, toPlayOf } from '../../parts/match-view.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { MatchHoles } from './MatchHoles.tsx'

interface Props {
  readonly outing: Outing
  readonly matches: readonly MatchLine[]
}

/** Each match with its line between the two sides. */
export function MatchOnBoard({ outing, matches }: Props) {
  return matches.map(line => <Match key={line.sides.join('|')} outing={outing} line={line} />)
}

/** The stand is on the row of the side that is up. */
function Match({ outing, line }: { readonly outing: Outing; readonly line: MatchLine }) {
  const stand = <strong>{standOf(line.state)}</strong>
  const isSecondUp = aheadIn(line) === line.sides[1]
  const rest = toPlayOf(line.state)
  const two = line.unsettled.map(key => key.split('/')[0] ?? '')
  return (
    <div className="match">
      <p className="match-side">
        <b>{sideName(outing, line.sides[0])}</b> {isSecondUp ? <span className="quiet">{rest}</span> : stand}
      </p>
      <MatchStrip line={line} label={matchLineWords(outing, line)} />
      <p className="match-side">
        <b>{sideName(outing, line.sides[1])}</b> {isSecondUp ? stand : <span className="quiet">{rest}</span>}
      </p>
      {two.length > 0 && <p>{say('board-two-scores', { hole: formatList(two) })}</p>}
      <MatchHoles outing={outing} line={line} />
    </div>
  )
}
