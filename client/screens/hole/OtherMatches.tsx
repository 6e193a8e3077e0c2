import type { Outing } from '#core/outing/outing.ts'
import { matchWords, sideName } from '../../parts/match-view.ts'
import { say } from '../../words/say.ts'
import type { MatchShown } from './hole-view.ts'
import { shortWord } from './strokes-here.ts'

interface Props {
  readonly outing: Outing
  readonly matches: readonly MatchShown[]
}

/** The matches that the head has no room for, a line each. */
export function OtherMatches({ outing, matches }: Props) {
  if (matches.length === 0) return null
  return (
    <ul className="stands">
      {matches.map(({ format, line }) => {
        const [first = '', second = ''] = line.sides.map(side => sideName(outing, side))
        return (
          <li key={`${format} ${first} ${second}`} className="spread">
            <span className="quiet">
              {shortWord(format)} {say('versus', { first, second })}
            </span>{' '}
            <b>{matchWords(outing, line)}</b>
          </li>
        )
      })}
    </ul>
  )
}
