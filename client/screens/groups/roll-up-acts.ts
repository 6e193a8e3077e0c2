import type { NewFact } from '#core/outing/acts.ts'
import {
  type Comer,
  comerFacts,
  type GroupToBe,
  groupFacts,
  joinGroupFacts,
  throwFacts,
  widenedGameFacts,
} from '#core/outing/acts-roll-up.ts'
import { groupsThrown } from '#core/outing/draw/group-sizes.ts'
import { handicapOfPlain } from '#core/outing/facts-of-plain.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId, GameId, GroupId, PlayerId, TeeId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import type { PlayerDraft } from '../start/draft.ts'
import { plainHandicap, type Throw } from '../start/facts-of-draft.ts'

/** Where new players go: thrown with everybody, into groups of their own, or to a group that stands. */
export type Target = 'thrown' | 'new' | GroupId

/** What the phone brings: ids that nobody has drawn, and the throw. */
export interface Chance {
  readonly createId: () => string
  readonly thrown: Throw
}

export interface Coming {
  readonly players: readonly Omit<PlayerDraft, 'id'>[]
  readonly target: Target
  /** The games of everybody that they come into. */
  readonly games: readonly GameId[]
  readonly startHole: number
}

/** One act: who comes, where they play, and the games that they come into. */
export function comingFacts(outing: Outing, { players, target, games, startHole }: Coming, chance: Chance): NewFact[] {
  const comers = players.map(player => comerOf(player, chance.createId))
  const balls = comers.map(({ ball }) => ball)
  return [
    ...comerFacts(comers),
    ...placesOf(outing, balls, target, startHole, chance),
    ...widenedGameFacts(outing, games, balls),
  ]
}

/** With the ball's id the player's, as at a start. */
function comerOf({ name, kind, figure, tee }: Omit<PlayerDraft, 'id'>, createId: () => string): Comer {
  const id = createId()
  return {
    player: id as PlayerId,
    ball: id as BallId,
    name: name.trim(),
    handicap: figure.trim() === '' ? null : handicapOfPlain(plainHandicap(kind, figure.trim())),
    tee: tee === '' ? null : (tee as TeeId),
  }
}

function placesOf(
  outing: Outing,
  balls: readonly BallId[],
  target: Target,
  startHole: number,
  chance: Chance,
): NewFact[] {
  if (target === 'thrown') return thrownFacts(outing, [...outing.balls.keys(), ...balls], startHole, chance)
  if (target !== 'new') return joinGroupFacts(outing, target, balls)
  const taken = outing.groups.size
  return groupsThrown(chance.thrown(balls)).flatMap((group, place) =>
    groupFacts(outing, {
      group: chance.createId() as GroupId,
      name: say('group-n', { n: taken + place + 1 }),
      balls: group,
      startHole,
    }),
  )
}

/** Everybody thrown anew; groups that stand keep their ids, so that the phones let into them go on with them. */
export function thrownFacts(
  outing: Outing,
  balls: readonly BallId[],
  startHole: number,
  { createId, thrown }: Chance,
): NewFact[] {
  const ids = [...outing.groups.keys()].sort()
  const groups = groupsThrown(thrown(balls)).map(
    (group, place): GroupToBe => ({
      group: ids[place] ?? (createId() as GroupId),
      name: say('group-n', { n: place + 1 }),
      balls: group,
      startHole,
    }),
  )
  return throwFacts(outing, groups)
}

/** The hole that a group starts from; 1 where there is none. */
export const startHoleOf = ({ groups }: Outing): number => [...groups.values()][0]?.round[0]?.hole ?? 1
