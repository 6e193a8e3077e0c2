import { opIdOf } from '#core/log/op.ts'
import { type Here, isHere } from '#core/log/ranges.ts'
import { makeKey } from '#core/outing/keys.ts'
import { unreachable } from '#core/values/assert.ts'
import type { OpId } from '#core/values/ids.ts'
import type { Exchange } from '#shared/messages/exchange.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { DownVerdict } from './answers.ts'
import { isInFeed } from './feeds.ts'
import { type HeldOp, type Mark, noMark, waitingMark } from './held-op.ts'
import { type Holding, waitingOps, withFeedSeq } from './holding.ts'
import type { Change, LogRecord } from './log-store.ts'

export interface Sent {
  readonly held: HeldOp
  readonly verdict: DownVerdict
}

/** Notes what became of a frame. An op that is gone, or came down meanwhile, is left as it is. */
export function sentChange(holding: Holding, sent: readonly Sent[]): Change {
  const put = sent.flatMap(({ held, verdict }) => {
    const now = holding.ops.get(opIdOf(held.op))
    if (!now || now.text !== held.text || now.mark.kind === 'none') return []
    return [{ ...now, ...marked(verdict) }]
  })
  return { put, record: record => sent.reduce(advanced, record) }
}

function marked(verdict: DownVerdict): { readonly mark: Mark; readonly seq?: number } {
  switch (verdict.kind) {
    case 'stored':
    case 'already stored':
      return { mark: noMark, seq: verdict.seq }
    case 'refused':
      return { mark: verdict }
    case 'later':
      return { mark: isSoon(verdict) ? waitingMark : verdict }
    default:
      return unreachable(verdict)
  }
}

/** Nothing is wrong with the op nor with who sends it: the same again in a moment. */
export const isSoon = (verdict: DownVerdict): boolean =>
  verdict.kind === 'later' && ['busy', 'disk', 'database'].includes(verdict.reason)

/** A feed that was complete up to just before the op stored is so up to it. */
const advanced = (record: LogRecord, { held, verdict }: Sent): LogRecord => {
  if (verdict.kind !== 'stored') return record
  const next = record.feeds.filter(([feed, seq]) => isInFeed(feed, held.op.scope) && seq === verdict.seq - 1)
  return next.reduce((newer, [feed]) => withFeedSeq(newer, feed, verdict.seq), record)
}

/** A feed, and which n of which device a server holds of it. */
export interface Compared {
  readonly feed: Feed
  readonly here: Exchange['here']
}

/**
 * After an exchange: what this phone holds of these feeds and the server lacks is to be sent. Of what was carried here
 * from elsewhere nothing was compared: a server of a new era may lack that too, and says so when it is sent.
 */
export function lackedChange({ ops }: Holding, compared: readonly Compared[], isNewEra: boolean): Change {
  const all = compared.map(({ feed, here }) => ({ feed, theirs: new Map(here) as Here }))
  const isLacked = ({ op: { scope, device, n } }: HeldOp): boolean => {
    const around = all.filter(({ feed }) => isInFeed(feed, scope))
    return around.length === 0 ? isNewEra : around.some(({ theirs }) => !isHere(theirs, device, n))
  }
  // What no server was known to have is sent as well: its answer says where it stands.
  const isToSend = (held: HeldOp): boolean => held.mark.kind === 'none' && (held.seq === null || isLacked(held))
  return { put: [...ops.values()].filter(isToSend).map(toSend) }
}

/** A server that does not hold the log gets all of it. */
export const wholeChange = ({ ops }: Holding): Change => ({
  put: [...ops.values()].filter(({ mark }) => mark.kind === 'none').map(toSend),
  record: forgetEra,
})

/** A server that has deleted the log holds nothing of it; nothing is to be sent there. */
export const goneChange = ({ ops }: Holding): Change => ({
  put: [...ops.values()].filter(({ seq }) => seq !== null).map(held => ({ ...held, seq: null })),
  record: forgetEra,
})

export const forgetEra = (record: LogRecord): LogRecord => ({ ...record, era: null, feeds: [] })

const toSend = (held: HeldOp): HeldOp => ({ ...held, seq: null, serverAt: null, mark: waitingMark })

/** What is to be sent now, in order, this phone's own key before all; what was put off on this link already waits for the next. */
export const lineOf = (holding: Holding, tried: ReadonlySet<OpId>): readonly HeldOp[] =>
  firstOf(
    waitingOps(holding).filter(({ op, mark }) => mark.kind === 'waiting' || !tried.has(opIdOf(op))),
    [makeKey('key', { device: holding.record.device })],
  )

/** The line with the first op that gives one of these keys before the others: the rest may stand on it. */
function firstOf(line: readonly HeldOp[], keys: readonly string[]): readonly HeldOp[] {
  const first = line.find(({ op }) => op.facts.some(({ key, value }) => keys.includes(key) && value !== null))
  return first ? [first, ...line.filter(held => held !== first)] : line
}

/** The line to a server without the log: first the op in which this phone's key or invite stands, the founder's if it can. */
export function foundingLine(holding: Holding, tried: ReadonlySet<OpId>): readonly HeldOp[] {
  const { device, invite } = holding.record
  const keys = [makeKey('key', { device }), ...(invite ? [makeKey('invite', { invite: invite.id })] : [])]
  return firstOf(lineOf(holding, tried), keys)
}
