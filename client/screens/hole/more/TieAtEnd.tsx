import type { BallId, LogId } from '#core/values/ids.ts'
import { sideName } from '../../../parts/side-name.ts'
import { formatList } from '../../../words/figures.ts'
import { say } from '../../../words/say-any.ts'
import type { MoreProps } from './MoreOnHole.tsx'
import { PlayOnOr } from './PlayOnOr.tsx'

interface Props extends Pick<MoreProps, 'outing' | 'group'> {
  readonly log: LogId
  readonly tied: readonly (readonly BallId[])[]
}

/** A tie that the terms leave to extra holes: the group plays on for it. */
export function TieAtEnd({ log, outing, group, tied }: Props) {
  const sides = formatList(tied.map(side => sideName(outing, side)))
  return <PlayOnOr log={log} group={group} label={say('tie-end')} ask={say('tie-end-ask', { sides })} end={null} />
}
