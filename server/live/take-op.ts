import type { Op } from '#core/log/op.ts'
import type { Refusal, Verdict } from '#shared/messages/verdict.ts'
import { parseOp } from '#shared/op.ts'
import { schemaInAnyLog } from '#shared/player-facts.ts'
import { forbiddenFact, hasWholeLog } from '#shared/roles.ts'
import { type AccessChange, accessChangeOf } from '../access/claims.ts'
import type { Shown } from '../access/shown.ts'
import type { Weight } from '../access/weigh.ts'
import type { Entry, Outcome } from '../store/store.ts'

/** What is to be done with one pushed op, from its text and who pushed it alone. */
export type Taking =
  | { readonly kind: 'append'; readonly op: Op; readonly entry: Entry }
  /** Not in the pusher's rights: stored already, it may be; else for the desk to see. */
  | { readonly kind: 'offer'; readonly op: Op }
  /** Not to be stored now, or never for this pusher: this is said unless it is stored already. */
  | { readonly kind: 'unless held'; readonly op: Op; readonly verdict: NotStored }
  | { readonly kind: 'verdict'; readonly verdict: Verdict }

export type NotStored = Extract<Verdict, { kind: 'refused' | 'later' }>

const refused = (code: Refusal, path: string): Taking => ({
  kind: 'verdict',
  verdict: { kind: 'refused', code, path },
})

/** Another may have brought it, in its own right. */
const refusedUnlessHeld = (op: Op, code: Refusal, path: string): Taking => ({
  kind: 'unless held',
  op,
  verdict: { kind: 'refused', code, path },
})

const later = (reason: Extract<Verdict, { kind: 'later' }>['reason']): Taking => ({
  kind: 'verdict',
  verdict: { kind: 'later', reason },
})

interface Push {
  readonly shown: Shown
  readonly weight: Weight
  readonly isFirst: boolean
  readonly at: number
}

/** Reads strictly, then authorises. Only a typed refusal is final. */
export function takeOp(text: string, push: Push): Taking {
  const parsed = parseOp(text, schemaInAnyLog)
  if (!parsed.ok) return parsed.error.code === 'newer' ? later('newer') : refused(parsed.error.code, parsed.error.path)
  const op = parsed.value
  if (op.log !== push.shown.log) return refused('other log', 'log')
  const { weight } = push
  switch (weight.kind) {
    case 'stranger':
      return takeFromStranger(op, text, push, weight.why)
    case 'guest':
      return takeFromGuest(op, text, push, weight)
    case 'member':
      return takeFromMember(op, text, push, weight)
  }
}

function takeFromStranger(op: Op, text: string, push: Push, why: (Weight & { kind: 'stranger' })['why']): Taking {
  switch (why) {
    case 'voided':
      return refusedUnlessHeld(op, 'voided', '')
    case 'deleted':
      return refused('deleted', 'log')
    case 'busy':
    case 'protocol too old':
      return later('busy')
    case 'key unknown':
      return later('key unknown')
    case 'log unknown': {
      const change = accessChangeOf(op)
      if (!push.isFirst || !bringsLog(change, push.shown)) return later('key unknown')
      return append(op, text, push, change, { creates: true, under: null, mayRegrant: true })
    }
  }
}

/** The first op of a log gives the key or the invite that is being shown: whoever knows its secret may bring it. */
const bringsLog = ({ claims }: AccessChange, { device, keyHash, invite }: Shown): boolean =>
  claims.some(({ kind, name, hash }) =>
    kind === 'key' ? name === device && hash === keyHash : name === invite?.id && hash === invite.hash,
  )

/** A guest's first own op gives its key, exactly as the invite grants it; until then everything waits. */
function takeFromGuest(op: Op, text: string, push: Push, { actor, invite }: Weight & { kind: 'guest' }): Taking {
  const index = op.facts.findIndex(({ key }) => key === `key/${push.shown.device}`)
  const fact = op.facts[index]
  if (op.device !== push.shown.device || !fact) {
    return { kind: 'unless held', op, verdict: { kind: 'later', reason: 'key unknown' } }
  }
  const forbidden = forbiddenFact(actor, op)
  if (forbidden !== null) return refusedUnlessHeld(op, 'forbidden', `facts[${forbidden}].key`)
  const { hash, role, group, invite: by } = (fact.value ?? {}) as Readonly<Record<string, unknown>>
  const isGranted = hash === push.shown.keyHash && role === actor.role && group === actor.group && by === invite
  if (!isGranted) return refusedUnlessHeld(op, 'forbidden', `facts[${index}].key`)
  const under = { kind: 'invite', name: invite } as const
  return append(op, text, push, accessChangeOf(op), { creates: false, under, mayRegrant: false })
}

function takeFromMember(op: Op, text: string, push: Push, { actor }: Weight & { kind: 'member' }): Taking {
  const forbidden = forbiddenFact(actor, op)
  if (forbidden !== null) {
    const isOwn = op.device === actor.device
    return isOwn ? refusedUnlessHeld(op, 'forbidden', `facts[${forbidden}].key`) : { kind: 'offer', op }
  }
  const under = { kind: 'key', name: actor.device } as const
  return append(op, text, push, accessChangeOf(op), { creates: false, under, mayRegrant: hasWholeLog(actor) })
}

function append(
  op: Op,
  text: string,
  { shown, at }: Push,
  change: AccessChange,
  how: Pick<Entry, 'creates' | 'under' | 'mayRegrant'>,
): Taking {
  const { log, device, n, scope } = op
  const carrier = device === shown.device ? null : shown.device
  return { kind: 'append', op, entry: { log, device, n, scope, text, at, carrier, ...change, ...how } }
}

/** The verdict for an op that may be stored already: by identity and text, whoever asks. */
export function verdictOfHeld(held: { readonly seq: number; readonly text: string }, text: string): Verdict {
  return held.text === text
    ? { kind: 'already stored', seq: held.seq }
    : { kind: 'refused', code: 'identity taken', path: 'n' }
}

export const isVerdict = (outcome: Outcome): outcome is Verdict => outcome.kind !== 'weigh again'
