import type { Op } from '#core/log/op.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import type { Verdict } from '#shared/messages/verdict.ts'
import type { Shown } from '../access/shown.ts'
import type { Weight } from '../access/weigh.ts'
import type { Entry, Offer, Outcome, Store } from '../store/store.ts'
import { troubleOf } from '../store/trouble.ts'
import { isVerdict, type NotStored, takeOp, verdictOfHeld } from './take-op.ts'

/** Ops that one phone may have waiting for the desk. */
const mostOffersByCarrier = 500

export interface PushDeps {
  readonly store: Store
  readonly now: () => number
  weigh(shown: Shown): Promise<Weight>
  stored(entry: Entry, seq: number): void
  offered(log: LogId, offer: Offer): void
  /** Keys, invites or voids have changed. */
  accessChanged(log: LogId): void
}

/** Gives each op its verdict, in order; what does not depend on each other is committed together. */
export async function pushOps(deps: PushDeps, shown: Shown, texts: readonly string[]): Promise<Verdict[]> {
  let weight = await deps.weigh(shown)
  const verdicts: Promise<Verdict>[] = []
  for (const [index, text] of texts.entries()) {
    const { verdict, changesAccess } = takeOne(deps, shown, weight, text, index === 0)
    verdicts.push(verdict)
    if (!changesAccess) continue
    // What comes behind may stand on the key that this one gives.
    await verdict
    weight = await deps.weigh(shown)
    deps.accessChanged(shown.log)
  }
  return Promise.all(verdicts)
}

interface Taken {
  readonly verdict: Promise<Verdict>
  readonly changesAccess: boolean
}

function takeOne(deps: PushDeps, shown: Shown, weight: Weight, text: string, isFirst: boolean): Taken {
  const taking = takeOp(text, { shown, weight, isFirst, at: deps.now() })
  switch (taking.kind) {
    case 'verdict':
      return { verdict: Promise.resolve(taking.verdict), changesAccess: false }
    case 'unless held':
      return { verdict: heldOr(deps, taking.op, text, taking.verdict), changesAccess: false }
    case 'offer':
      return { verdict: offerOp(deps, shown, taking.op, text), changesAccess: false }
    case 'append': {
      const { entry } = taking
      const changesAccess = entry.creates || entry.claims.length > 0 || entry.voidings.length > 0
      return { verdict: appendOp(deps, shown, entry), changesAccess }
    }
  }
}

async function appendOp(deps: PushDeps, shown: Shown, entry: Entry): Promise<Verdict> {
  const outcome: Outcome = await deps.store.append(entry)
  if (!isVerdict(outcome)) {
    const again = takeOne(deps, shown, await deps.weigh(shown), entry.text, false)
    return again.verdict
  }
  if (outcome.kind === 'stored') deps.stored(entry, outcome.seq)
  // The desk has said no to it in its own name.
  if (outcome.kind === 'refused' && entry.carrier !== null) await dropOffer(deps, entry)
  return outcome
}

async function dropOffer({ store }: PushDeps, { log, device, n }: Entry): Promise<void> {
  try {
    await store.dropOffer(log, device, n)
  } catch {
    // It stays on offer until the disk is well again.
  }
}

/** An op that is in no right of its carrier's: shown to the desk, unless it is stored already. */
async function offerOp(deps: PushDeps, { log, device }: Shown, op: Op, text: string): Promise<Verdict> {
  const verdict = await heldOr(deps, op, text, { kind: 'later', reason: 'desk' })
  if (verdict.kind !== 'later' || verdict.reason !== 'desk') return verdict
  const offer: Offer = { device: op.device, n: op.n, text, carrier: device as DeviceId }
  try {
    if (await deps.store.offer(log, offer, mostOffersByCarrier)) deps.offered(log, offer)
    return verdict
  } catch (error) {
    return { kind: 'later', reason: troubleOf(error) }
  }
}

/** Who was taken out hears of what is held only that this very op is. */
async function heldOr({ store }: PushDeps, op: Op, text: string, otherwise: NotStored): Promise<Verdict> {
  try {
    const held = await store.find(op.log, op.device, op.n)
    const isOut = otherwise.kind === 'refused' && otherwise.code === 'voided'
    return held && !(isOut && held.text !== text) ? verdictOfHeld(held, text) : otherwise
  } catch (error) {
    return { kind: 'later', reason: troubleOf(error) }
  }
}
