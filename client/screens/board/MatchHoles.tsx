import type { MatchLine } from '#core/formats/game-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import { say } from '../../words/say-any.ts'
import { matchHoleWords, voidWords } from './match-hole-words.ts'

/** Who won each hole of a match, and why. */
export function MatchHoles({ outing, line }: { readonly outing: Outing; readonly line: MatchLine }) {
  const holes = matchHoleWords(outing, line)
  const voids = voidWords(outing, line)
  if (holes.length + voids.length === 0) return null
  return (
    <details>
      <summary>{say('hole-by-hole')}</summary>
      <ul className="lines">
        {holes.map(({ key, what, why }) => (
          <li key={key} className="spread">
            <span>{what}</span> <span className="quiet">{why}</span>
          </li>
        ))}
        {voids.map(line => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  )
}
