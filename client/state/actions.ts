import type { HoleScore } from '#core/card/score.ts'
import { opIdOf } from '#core/log/op.ts'
import { type LeftReason, type Undo, undoOf } from '#core/log/undo.ts'
import { chooseScoreFacts, factsReplacing, type NewFact, scoreFact } from '#core/outing/acts.ts'
import type { LogId, OpId } from '#core/values/ids.ts'
import type { LogRecord } from '../sync/log-store.ts'
import { scopeOfKeys } from '../sync/scope.ts'
import { closeLog, currentEngine, engineOf, isOpen, logStore, showLog } from './open-outing.ts'
import { closedOuting, outingStore } from './outing-store.ts'
import { recordFor, type ScoreAt } from './score-record.ts'

export interface OutingSummary {
  readonly log: LogId
  readonly title: string | null
  readonly day: string | null
  readonly courseName: string | null
  /** When this phone last wrote or heard something of it, milliseconds since 1970. */
  readonly at: number
  readonly waiting: number
}

/** The outings on this phone, the last touched first; empty where its storage does not answer. */
export async function listOutings(): Promise<readonly OutingSummary[]> {
  const logs = await logStore.list().catch(() => [])
  return logs.map(({ record, waiting }) => summaryOf(record, waiting)).sort((a, b) => b.at - a.at)
}

const summaryOf = ({ log, title, day, courseName, at }: LogRecord, waiting: number): OutingSummary => ({
  log,
  title,
  day,
  courseName,
  at,
  waiting,
})

/** Opens an outing that is on this phone; `not here` in the store when it is not. */
export async function openOuting(log: LogId): Promise<void> {
  if (engineOf(log)) return
  closeLog()
  outingStore.setState({ ...closedOuting, log, phase: 'loading' }, true)
  const stored = await logStore.load(log).catch(() => null)
  if (outingStore.getState().log !== log || engineOf(log)) return
  if (stored) showLog(stored, true)
  else outingStore.setState({ ...closedOuting, log, phase: 'not here' }, true)
}

/** Writes one act; each fact replaces what is seen under its key. */
export async function act(name: string, facts: readonly NewFact[]): Promise<void> {
  await currentEngine().write(({ state }) => ({
    scope: scopeOfKeys(facts),
    act: name,
    facts: factsReplacing(state, facts),
  }))
}

/** Writes into the marker's record where this phone keeps it, else into the card of the ball's group, or into the desk's record where this phone is the desk of several. A null score withdraws. */
export async function enterScore(entry: ScoreAt & { readonly score: HoleScore | null }): Promise<void> {
  const { outing, me } = outingStore.getState()
  if (!outing) throw new Error('no outing is open')
  await act(entry.score === null ? 'score withdrawn' : 'score entered', [
    scoreFact({ ...placeOf(entry), ...recordFor(outing, me, entry) }),
  ])
}

const placeOf = ({ ball, hole, lap, score }: ScoreAt & { readonly score: HoleScore | null }) => ({
  ball,
  hole,
  lap,
  score,
})

/** Ends two scores: writes the chosen one into every record that differs. */
export async function chooseScore(entry: ScoreAt & { readonly score: HoleScore }): Promise<void> {
  const { outing } = outingStore.getState()
  if (!outing) throw new Error('no outing is open')
  await currentEngine().write(({ state }) => {
    const facts = factsReplacing(state, chooseScoreFacts(state, outing, entry))
    return { scope: scopeOfKeys(facts), act: 'score chosen', facts }
  })
}

/** Takes one act back; what it leaves as it is comes back with the reason. */
export async function undo(op: OpId): Promise<readonly { readonly key: string; readonly reason: LeftReason }[]> {
  let undone: Undo = { facts: [], left: [] }
  await currentEngine().write(({ state, ops }) => {
    const shown = [...ops.values()].filter(({ mark }) => mark.kind !== 'refused').map(held => held.op)
    const taken = shown.find(other => opIdOf(other) === op)
    if (!taken) return null
    undone = undoOf(state, shown, taken)
    return { scope: scopeOfKeys(undone.facts), act: 'undone', facts: undone.facts }
  })
  return undone.left
}

/** The desk takes in an op that somebody carries beyond their own rights. */
export const takeOffered = (text: string): Promise<void> => currentEngine().bring([text])

/** A tap: connects again at once. */
export function retryNow(): void {
  if (isOpen()) currentEngine().wake()
}

export const forgetRefused = (op: OpId): Promise<void> => currentEngine().forget(op)
