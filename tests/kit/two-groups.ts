import { foldOps, type LogState } from '#core/log/fold.ts'
import type { Fact, Op } from '#core/log/op.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import type { Outing } from '#core/outing/outing.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import type { BallId, GameId, GroupId, PlayerId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { foldAll, makeOp } from './histories.ts'
import { quillmoor } from './quillmoor.ts'

export const alder = 'alder' as BallId
export const birch = 'birch' as BallId
export const groupA = 'a' as GroupId
export const groupB = 'b' as GroupId

/** Nine holes, so that 20,000 histories stay quick: Alder in group a, Birch in group b, and one Stableford for both. */
export const twoGroups: PlainOuting = {
  sixThrees: 'outing',
  version: 1,
  form: 'plain',
  length: 9,
  course: {
    name: quillmoor.name,
    holes: quillmoor.pars.slice(0, 9).map((par, place) => ({ par, index: quillmoor.indexes[place] ?? 1 })),
  },
  players: [
    { id: 'alder' as PlayerId, name: 'Alder', handicap: { strokes: 14 } },
    { id: 'birch' as PlayerId, name: 'Birch', handicap: { strokes: 7 } },
  ],
  groups: [
    { id: groupA, name: 'Group 1', balls: [alder] },
    { id: groupB, name: 'Group 2', balls: [birch] },
  ],
  games: [{ id: 'points' as GameId, format: 'stableford', sides: [[alder], [birch]] }],
}

/** The op that the outing starts with; the histories of a property come after it. */
export const startOp: Op = makeOp(
  [],
  'desk',
  factsOfPlain(twoGroups).map((fact): Fact => ({ ...fact, replaces: [] })),
)

const start = foldAll([startOp])

/** The outing with these ops in it. */
export const stateWith = (ops: Iterable<Op>): LogState => foldOps(start, ops)

export const outingOfState = (state: LogState): Outing => outingOf(state, isKnownValue)

export const outingWith = (ops: Iterable<Op>): Outing => outingOfState(stateWith(ops))

/** An act of a writer who has seen all of the history. */
export const actAfter = (before: readonly Op[], device: string, facts: readonly NewFact[]): Op =>
  makeOp([startOp, ...before], device, factsReplacing(stateWith(before), facts))
