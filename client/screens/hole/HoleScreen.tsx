import { Redirect } from 'wouter'
import type { Outing } from '#core/outing/outing.ts'
import type { GroupId } from '#core/values/ids.ts'
import { ownGroupOf } from '../../state/own-group.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { holePath } from '../paths.ts'
import { HolePage } from './HolePage.tsx'
import { holeInPlay } from './hole-in-play.ts'
import { groupShown, holesOf } from './hole-view.ts'

/** The hole that the address names, or the one in play. */
export function HoleScreen({ hole, lap }: { readonly hole: number | null; readonly lap: number }) {
  const outing = useOuting(store => store.outing)
  const levels = useOuting(store => store.levels)
  const own = useOuting(ownGroupOf)
  const log = useOuting(store => store.log)
  if (!outing || !levels || !log) return null
  const group = groupShown(outing, own)
  if (!group || group.balls.length === 0)
    return <Nothing words={say(group && isLeft(outing, group.id) ? 'all-left' : 'no-balls')} />
  const asked = holesOf(group).find(each => each.hole === hole && each.lap === lap)
  if (asked) return <HolePage log={log} outing={outing} levels={levels} group={group} at={asked} />
  const inPlay = holeInPlay(outing, group)
  // The address names the hole, so that the page does not move on under the finger that puts in its last score.
  return inPlay ? <Redirect to={holePath(log, inPlay)} replace /> : <Nothing words={say('no-holes')} />
}

/** Somebody has played here and gone on with another group. */
const isLeft = ({ balls }: Outing, id: GroupId): boolean =>
  [...balls.values()].some(({ elsewhere }) => elsewhere.some(({ group }) => group === id))

function Nothing({ words }: { readonly words: string }) {
  return (
    <OutingPage tab="hole">
      <h1 className="hidden">{say('tab-hole')}</h1>
      <p>{words}</p>
    </OutingPage>
  )
}
