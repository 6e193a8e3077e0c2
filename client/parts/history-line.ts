import type { HoleScore } from '#core/card/score.ts'
import { type Fact, type Op, opIdOf, withdrawn } from '#core/log/op.ts'
import type { KeyParts } from '#core/outing/facts.ts'
import { makeKey, parseKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { DeviceId, OpId } from '#core/values/ids.ts'
import { cardTaken } from '../state/card-taken.ts'
import type { HeldOp } from '../state/outing-store.ts'
import { formatOrdinal, formatScore } from '../words/figures.ts'
import { say } from '../words/say-any.ts'
import { noteLine } from './note-line.ts'
import { whoOf } from './who-of.ts'

/** The ops held here by identity: what a correction replaced is read from them. */
export type HeldById = ReadonlyMap<OpId, Op>

export const heldById = (history: readonly HeldOp[]): HeldById => new Map(history.map(({ op }) => [opIdOf(op), op]))

/** One act as one line: "Birch changed Rowan's 8th from 5 to 6". */
export function lineOfOp(op: Op, outing: Outing | null, held: HeldById | null): string {
  const who = whoThen(op, held) ?? whoOf(outing, op.device)
  const parts = op.facts.map(({ key }) => parseKey(key))
  const kinds = new Set(parts.map(each => each?.kind))
  const scoreAt = parts.findIndex(each => each?.kind === 'score')
  const [fact, at] = [op.facts[scoreAt], parts[scoreAt]]
  if (op.act === cardTaken) return say('history-taken-home')
  if (kinds.has('course') || kinds.has('length')) return say('history-started', { who })
  if (kinds.has('closeBall')) return say(closeKey(op), { who })
  if (fact && at) return scoreLine(fact, at, who, outing, held)
  if (kinds.has('key')) return keyLine(op, who, held)
  if (kinds.has('voidKey')) return voidLine(op, who, outing)
  if (kinds.has('voidInvite')) return say(isTakenBack(op) ? 'history-invite-again' : 'history-invite-stopped', { who })
  if (kinds.has('invite')) return say('history-invited', { who })
  const noted = noteLine(op, who, outing)
  if (noted !== null) return noted
  return say('history-other', { who, act: op.act })
}

const namesKept = new WeakMap<HeldById, ReadonlyMap<DeviceId, readonly (readonly [n: number, name: string])[]>>()

/** The names that each phone has given, by the number of the act. */
function namesOf(held: HeldById) {
  const known = namesKept.get(held)
  if (known) return known
  const names = new Map<DeviceId, (readonly [number, string])[]>()
  for (const op of held.values()) {
    const fact = op.facts.find(({ key }) => key === makeKey('key', { device: op.device }))
    const label = fact ? labelOf(fact) : null
    if (label !== null) names.set(op.device, [...(names.get(op.device) ?? []), [op.n, label]])
  }
  namesKept.set(held, names)
  return names
}

/** Whose phone it was when it did this: another player may have it since. */
export function whoThen({ device, n }: Op, held: HeldById | null): string | null {
  const before = (held ? (namesOf(held).get(device) ?? []) : []).filter(([at]) => at <= n)
  return before.toSorted(([a], [b]) => a - b).at(-1)?.[1] ?? null
}

/** A key over a key gives the phone another name. */
function keyLine({ facts }: Op, who: string, held: HeldById | null): string {
  const fact = facts.find(({ key }) => parseKey(key)?.kind === 'key')
  const [replaced] = fact?.replaces ?? []
  const before = replaced && held?.get(replaced)?.facts.find(({ key }) => key === fact?.key)
  const from = before ? labelOf(before) : null
  return from === null || from === who ? say('history-joined', { who }) : say('history-handed', { from, who })
}

function labelOf({ value }: Fact): string | null {
  const { label } = (value ?? {}) as Readonly<Record<string, unknown>>
  return typeof label === 'string' ? label : null
}

function voidLine({ facts }: Op, who: string, outing: Outing | null): string {
  const fact = facts.find(({ key }) => parseKey(key)?.kind === 'voidKey')
  const device = parseKey(fact?.key ?? '')?.device
  const phone = device ? whoOf(outing, device) : say('nobody')
  return say(fact?.value === withdrawn ? 'history-taken-back' : 'history-taken-out', { who, phone })
}

const isTakenBack = ({ facts }: Pick<Op, 'facts'>): boolean => facts.every(({ value }) => value === withdrawn)

/** A close over a close that stood takes a late score in. */
function closeKey({ facts }: Op): 'history-opened' | 'history-accepted' | 'history-closed' {
  if (isTakenBack({ facts })) return 'history-opened'
  const isAgain = facts.some(({ key, replaces }) => parseKey(key)?.kind === 'closeBall' && replaces.length > 0)
  return isAgain ? 'history-accepted' : 'history-closed'
}

function scoreLine(fact: Fact, at: KeyParts, who: string, outing: Outing | null, held: HeldById | null): string {
  const player = (at.ball && outing?.balls.get(at.ball)?.name) || String(at.ball)
  const fill = { who, player, hole: formatOrdinal(at.hole ?? 0) }
  if (fact.value === withdrawn) return say('history-cleared', fill)
  const score = formatScore(fact.value as HoleScore)
  const before = held ? valuesReplaced(fact, held) : []
  if (before.length > 1) return say('history-chose', { ...fill, score })
  const [from] = before
  if (from === undefined) return say('history-score', { ...fill, score })
  return say('history-changed', { ...fill, score, from })
}

/** The different scores that the fact took the place of. */
export function valuesReplaced(fact: Fact, held: HeldById): readonly string[] {
  const values = fact.replaces.flatMap(id => {
    const value = held.get(id)?.facts.find(({ key }) => key === fact.key)?.value
    return value === undefined || value === withdrawn ? [] : [formatScore(value as HoleScore)]
  })
  return [...new Set(values)]
}

/** True for a correction of a score that stood: the acts that other phones are told of in one line. */
export function isCorrection(op: Op, held: HeldById): boolean {
  return op.facts.some(fact => parseKey(fact.key)?.kind === 'score' && valuesReplaced(fact, held).length > 0)
}
