import type { HoleScore } from '#core/card/score.ts'
import type { LeftReason } from '#core/log/undo.ts'
import type { BallId, GroupId, LogId, OpId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { Fault, Result } from '#core/values/result.ts'

export interface NewFact {
  readonly key: string
  readonly value: Json
}

export interface OutingSummary {
  readonly log: LogId
  readonly title: string | null
  readonly day: string | null
  readonly courseName: string | null
  /** When this phone last wrote or heard something of it, milliseconds since 1970. */
  readonly at: number
  readonly waiting: number
}

export const joinFaults = [
  'not an invite',
  'no server',
  'log unknown',
  'invite unknown',
  'void',
  'deleted',
  'too old',
] as const
export type JoinFault = (typeof joinFaults)[number]

export interface ScoreAt {
  readonly ball: BallId
  readonly hole: number
  readonly lap: number
}

const notYet = (): never => {
  throw new Error('not connected yet')
}

export async function listOutings(): Promise<readonly OutingSummary[]> {
  return []
}
export async function openOuting(_log: LogId): Promise<void> {
  notYet()
}
export function closeOuting(): void {
  notYet()
}
/** Makes the log, this phone's key and a desk and a viewer invite, in one op with these facts. */
export async function startOuting(_facts: readonly NewFact[], _label: string): Promise<LogId> {
  return notYet()
}
export async function act(_name: string, _facts: readonly NewFact[]): Promise<void> {
  notYet()
}
/** A null score withdraws what stands. */
export async function enterScore(_entry: ScoreAt & { readonly score: HoleScore | null }): Promise<void> {
  notYet()
}
export async function chooseScore(_entry: ScoreAt & { readonly score: HoleScore }): Promise<void> {
  notYet()
}
export async function undo(_op: OpId): Promise<readonly { readonly key: string; readonly reason: LeftReason }[]> {
  return notYet()
}
export async function inviteLink(_role: 'desk' | 'scorer' | 'viewer', _group: GroupId | null): Promise<string> {
  return notYet()
}
export async function joinOuting(_link: string, _label: string): Promise<Result<LogId, JoinFault>> {
  return notYet()
}
export function exportFile(_form: 'whole' | 'plain'): { readonly name: string; readonly text: string } {
  return notYet()
}
export async function importFile(_text: string, _label: string): Promise<Result<LogId, readonly Fault[]>> {
  return notYet()
}
export async function takeOffered(_text: string): Promise<void> {
  notYet()
}
/** A tap: connects again at once. */
export function retryNow(): void {
  notYet()
}
export async function forgetRefused(_op: OpId): Promise<void> {
  notYet()
}
