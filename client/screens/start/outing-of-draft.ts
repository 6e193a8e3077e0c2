import { emptyLog, foldOps } from '#core/log/fold.ts'
import { factsReplacing } from '#core/outing/acts.ts'
import type { Outing } from '#core/outing/outing.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import type { Draft } from './draft.ts'
import { faultsOfDraft } from './draft-faults.ts'
import { factsOfDraft } from './facts-of-draft.ts'

/** The outing that a draft would start; null while something is at fault in it. */
export function outingOfDraft(draft: Draft): Outing | null {
  // What it is called and where it stands in the calendar changes no stroke.
  const named = { ...draft, courseName: draft.courseName.trim() || '-' }
  if (faultsOfDraft(named).length > 0) return null
  const facts = factsReplacing(emptyLog, factsOfDraft(named, '2000-01-01'))
  const op = { log: '' as LogId, scope: null, device: '' as DeviceId, n: 1, tick: 1, at: 0, act: '', facts }
  return outingOf(foldOps(emptyLog, [op]), isKnownValue)
}
