import { Link } from 'wouter'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { LogId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import { holePath } from '../paths.ts'
import { openLines } from './card-view.ts'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly group: Group
}

/** What is open still on the group's cards, each line with the way to its hole. */
export function OpenHoles({ log, outing, group }: Props) {
  const lines = openLines(outing, group)
  if (lines.length === 0) return <p>{say('card-complete')}</p>
  return (
    <ul className="notice open-holes">
      {lines.map(({ text, at }) => (
        <li key={text} className="spread">
          <span>{text}</span>
          <Link
            className="button"
            href={holePath(log, at)}
            aria-label={say('finish-mend-hole-of', { what: text, hole: at.hole })}
          >
            {say('to-hole', { hole: at.hole })}
          </Link>
        </li>
      ))}
    </ul>
  )
}
