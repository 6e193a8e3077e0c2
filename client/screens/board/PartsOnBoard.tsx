import type { PartLine, PartsResult } from '#core/formats/parts-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import { sideName } from '../../parts/match-view.ts'
import { partTitle } from '../../parts/part-title.ts'
import { MatchOnBoard } from './MatchOnBoard.tsx'
import { ShareLines } from './SharesOnBoard.tsx'

/** The points of the game, and each of its parts. */
export function PartsOnBoard({ outing, result }: { readonly outing: Outing; readonly result: PartsResult }) {
  return (
    <>
      <ShareLines outing={outing} lines={result.lines} />
      {result.parts.map(part => (
        <section key={`${part.name} ${part.number}`} aria-label={partTitle(part)}>
          <h3>{partTitle(part)}</h3>
          {part.match && <MatchOnBoard outing={outing} matches={[part.match]} />}
          {part.tallies.length > 0 && <Tallies outing={outing} part={part} />}
        </section>
      ))}
    </>
  )
}

function Tallies({ outing, part }: { readonly outing: Outing; readonly part: PartLine }) {
  return (
    <ul>
      {part.tallies.map(({ side, points }) => (
        <li key={side.join()}>
          {sideName(outing, side)} {points}
        </li>
      ))}
    </ul>
  )
}
