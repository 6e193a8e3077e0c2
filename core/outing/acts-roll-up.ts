import { roundFrom } from '#core/card/order-of-play.ts'
import { formatTable } from '#core/formats/table.ts'
import { withdrawn } from '#core/log/op.ts'
import type { BallId, GameId, GroupId, PlayerId, TeeId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { Handicap, HoleAndLap } from './facts.ts'
import { makeKey } from './keys.ts'
import type { Game, Outing } from './outing.ts'
import { type NewFact, statedFact } from './stated-fact.ts'

/** Somebody who comes to a running outing with a ball of their own. */
export interface Comer {
  readonly player: PlayerId
  readonly ball: BallId
  readonly name: string
  readonly handicap: Handicap | null
  readonly tee: TeeId | null
}

/** A group as it is to be: its balls in order, and the hole that it starts from. */
export interface GroupToBe {
  readonly group: GroupId
  readonly name: string
  readonly balls: readonly BallId[]
  readonly startHole: number
}

/** New players, each with a ball; in which group they play is said apart. */
export const comerFacts = (comers: readonly Comer[]): NewFact[] =>
  comers.flatMap(({ player, ball, name, handicap, tee }) => [
    statedFact('ball', { ball }, { players: [player] }),
    statedFact('player', { player }, { name }),
    ...(handicap === null ? [] : [statedFact('handicap', { player }, handicap)]),
    ...(tee === null ? [] : [statedFact('playerTee', { player }, tee)]),
  ])

/** A group more in a running outing. */
export const groupFacts = (outing: Outing, { group, name, balls, startHole }: GroupToBe): NewFact[] => [
  statedFact('group', { group }, { name }),
  statedFact('order', { group }, orderFrom(outing, startHole)),
  ...placeFacts(group, balls, 0),
]

/** Balls that join a group behind those that are in it. */
export const joinGroupFacts = (outing: Outing, group: GroupId, balls: readonly BallId[]): NewFact[] =>
  placeFacts(group, balls, Math.max(0, ...positionsIn(outing, group)))

const positionsIn = ({ balls }: Outing, of: GroupId): number[] =>
  [...balls.values()].flatMap(({ group, position }) => (group === of ? [position] : []))

const placeFacts = (group: GroupId, balls: readonly BallId[], taken: number): NewFact[] =>
  balls.map((ball, place) => statedFact('place', { ball }, { group, position: taken + place + 1, elsewhere: [] }))

function orderFrom({ length, holes }: Outing, start: number): readonly HoleAndLap[] {
  return roundFrom(start, length, holes.size === 9 ? 9 : 18).map(({ hole, lap }) => [hole, lap])
}

/**
 * Balls thrown for groups: what the throw came to is what is written, so that nobody has to throw again to prove it.
 * Groups that the throw leaves empty are taken away.
 */
export function throwFacts(outing: Outing, groups: readonly GroupToBe[]): NewFact[] {
  const kept = new Set(groups.map(({ group }) => group))
  const gone = [...outing.groups.keys()].filter(group => !kept.has(group))
  return [
    ...groups.flatMap(group => groupFacts(outing, group)),
    ...gone.map(group => ({ key: makeKey('group', { group }), value: withdrawn })),
  ]
}

/** True until anybody has written a score, or something else about a ball that a new group would leave behind. */
export const canThrow = ({ cards, notes, balls }: Outing): boolean =>
  [...cards.values()].every(({ scores, isClosed }) => !isClosed && [...scores.values()].every(isBlank)) &&
  notes.absences.size === 0 &&
  [...balls.values()].every(({ elsewhere }) => elsewhere.length === 0)

const isBlank = ({ kind }: { readonly kind: string }): boolean => kind === 'none'

/** The games of the whole outing that everybody can play in, each for themselves. */
export const gamesForAll = ({ games }: Outing): readonly Game[] =>
  games.filter(({ group, format }) => {
    if (group !== null || format === null) return false
    const { count, balls, players } = formatTable[format].sides
    return count.max === null && balls.max === 1 && players.min === 1 && players.max === 1
  })

/** These balls come into these games beside those that are in them. */
export const widenedGameFacts = (outing: Outing, games: readonly GameId[], balls: readonly BallId[]): NewFact[] =>
  gamesForAll(outing)
    .filter(({ id }) => games.includes(id))
    .flatMap(({ id, sides }) => {
      const stood = sides ?? []
      const added = balls.filter(ball => !stood.some(side => side.includes(ball))).map(ball => [ball])
      const key = makeKey('gameSides', { game: id })
      return added.length === 0 ? [] : [{ key, value: [...stood, ...added] as unknown as Json }]
    })
