import { Redirect } from 'wouter'
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
  if (!group || group.balls.length === 0) return <Nothing words={say('no-balls')} />
  const asked = holesOf(group).find(each => each.hole === hole && each.lap === lap)
  if (asked) return <HolePage log={log} outing={outing} levels={levels} group={group} at={asked} />
  const inPlay = holeInPlay(outing, group)
  // The address names the hole, so that the page does not move on under the finger that puts in its last score.
  return inPlay ? <Redirect to={holePath(log, inPlay)} replace /> : <Nothing words={say('no-holes')} />
}

function Nothing({ words }: { readonly words: string }) {
  return (
    <OutingPage tab="hole">
      <p>{words}</p>
    </OutingPage>
  )
}
