import type { HoleScore, PlayedHole } from '#core/card/score.ts'
import { opIdOf, withdrawn } from '#core/log/op.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import type { HeldOp } from '../state/outing-store.ts'
import { formatList, formatScore } from '../words/figures.ts'
import { say } from '../words/say-any.ts'
import { heldById, valuesReplaced, whoThen } from './history-line.ts'
import { whoOf } from './who-of.ts'

/** One score of a card that took the place of another. */
export interface CardChange extends PlayedHole {
  /** Of the act and the key in it. */
  readonly id: string
  readonly who: string
  /** The phone's clock, milliseconds since 1970. */
  readonly at: number
  /** What stood: "5", or "5, 6" where two scores did. */
  readonly from: string
  /** What stands since: "6", or the word for a hole cleared. */
  readonly to: string
}

/** Every change to a ball's card, the newest last; a first score is none. */
export function cardChanges(history: readonly HeldOp[], outing: Outing | null, ball: BallId): readonly CardChange[] {
  const held = heldById(history)
  return history.flatMap(({ op }) =>
    op.facts.flatMap((fact): readonly CardChange[] => {
      const at = parseKey(fact.key)
      if (at?.kind !== 'score' || at.ball !== ball || at.hole === null) return []
      const before = valuesReplaced(fact, held)
      const to = fact.value === withdrawn ? say('changes-cleared') : formatScore(fact.value as HoleScore)
      if (before.length === 0 || (before.length === 1 && before[0] === to)) return []
      const who = whoThen(op, held) ?? whoOf(outing, op.device)
      const id = `${opIdOf(op)} ${fact.key}`
      return [{ id, who, at: op.at, hole: at.hole, lap: at.lap ?? 1, from: formatList(before), to }]
    }),
  )
}
