import { ownGroupOf } from '../../state/own-group.ts'
import { useOuting } from '../../state/use-outing.ts'
import { groupShown } from './hole-view.ts'
import { useWhose } from './whose-scores.ts'

/** What a page about the group in play shows: the outing, the group, and whose this phone is; null while it is read. */
export function useGroupShown() {
  const outing = useOuting(store => store.outing)
  const levels = useOuting(store => store.levels)
  const me = useOuting(store => store.me)
  const log = useOuting(store => store.log)
  const own = useOuting(ownGroupOf)
  const [whose, setWhose] = useWhose(log, outing, me)
  return { outing, levels, log, group: outing && groupShown(outing, own), whose, setWhose }
}
