import type { PlayedHole } from '#core/card/score.ts'
import type { NewFact } from '#core/outing/acts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { Group } from '#core/outing/outing.ts'

/** The holes in their order again from the first. */
export const nextExtraHole = ({ round, extra }: Group): PlayedHole | undefined =>
  round[extra.length % Math.max(1, round.length)]

/** A hole of the course once more at the end of the group's order of play. */
export function extraHole({ round, extra }: Group, hole: number): PlayedHole {
  return { hole, lap: [...round, ...extra].filter(each => each.hole === hole).length + 1 }
}

export function extraHoleFacts(group: Group, extra: PlayedHole): NewFact[] {
  const order = [...group.round, ...group.extra, extra].map(each => [each.hole, each.lap] as const)
  return [{ key: makeKey('order', { group: group.id }), value: order }]
}
