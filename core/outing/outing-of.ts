import { orderOfPlay } from '#core/card/order-of-play.ts'
import type { LogState } from '#core/log/fold.ts'
import type { BallId, GroupId, ShapeId } from '#core/values/ids.ts'
import { settledCards } from './cards-of.ts'
import type { FactValues } from './facts.ts'
import { gamesOf, mainGameOf } from './games-of.ts'
import { notesOf } from './notes-of.ts'
import type { Ball, Group, Outing, Player } from './outing.ts'
import { type IsKnownValue, type Reading, type RowKind, readFacts } from './reading.ts'
import { emptySketch, type HoleSketch } from './sketch.ts'

/** Reads the current facts as an outing. What this version does not understand is named in `newer` and left out. */
export function outingOf(state: LogState, isKnown: IsKnownValue): Outing {
  const reading = readFacts(state, isKnown)
  const players = playersOf(reading)
  const balls = ballsOf(reading, players)
  const length = single(reading, 'length') ?? 18
  const groups = groupsOf(reading, balls, length)
  const games = gamesOf(reading)
  const settled = settledCards(reading, balls.keys())
  const onlyGroup = groups.size === 1 ? ([...groups.keys()][0] ?? null) : null
  return {
    title: single(reading, 'title'),
    day: single(reading, 'day'),
    length,
    rules: single(reading, 'rules') ?? true,
    ...courseOf(reading),
    players,
    balls,
    groups,
    games,
    namedMain: single(reading, 'main'),
    main: mainGameOf(games, single(reading, 'main'), onlyGroup)?.id ?? null,
    notes: notesOf(reading, balls, games),
    cards: new Map([...settled].map(([ball, { card }]) => [ball, card])),
    ...phonesOf(reading),
    doubts: reading.doubts,
    late: [...settled].flatMap(([ball, { late }]) => late.map(entry => ({ ...entry, ball }))),
    lateFacts: reading.lateFacts,
    stray: [...settled].flatMap(([ball, { stray }]) => stray.map(entry => ({ ...entry, ball }))),
    newer: reading.newer,
  }
}

/** The value of a kind that has one key. */
const single = <K extends RowKind>(reading: Reading, kind: K): FactValues[K] | null =>
  reading.rows(kind)[0]?.value ?? null

function byId<K extends RowKind, Id extends string>(
  reading: Reading,
  kind: K,
  idOf: (row: ReturnType<Reading['rows']>[number]['parts']) => Id | null,
): Map<Id, FactValues[K]> {
  return new Map(reading.rows(kind).map(({ parts, value }) => [idOf(parts) as Id, value]))
}

const courseOf = (reading: Reading): Pick<Outing, 'courseName' | 'holes' | 'tees' | 'sketches'> => ({
  courseName: single(reading, 'course')?.name ?? null,
  holes: new Map(
    reading
      .rows('hole')
      .map(({ parts, value }) => [parts.hole ?? 0, value] as const)
      .sort(([a], [b]) => a - b),
  ),
  tees: byId(reading, 'tee', ({ tee }) => tee),
  sketches: sketchesOf(reading),
})

function sketchesOf(reading: Reading): Map<number, HoleSketch> {
  const sketches = new Map<number, HoleSketch>()
  const of = (hole: number | null): HoleSketch => sketches.get(hole ?? 0) ?? emptySketch
  for (const { parts, value } of reading.rows('green')) {
    sketches.set(parts.hole ?? 0, { ...of(parts.hole), green: value })
  }
  for (const { parts, value } of reading.rows('shape')) {
    const { green, shapes } = of(parts.hole)
    sketches.set(parts.hole ?? 0, { green, shapes: new Map([...shapes, [parts.shape as ShapeId, value]]) })
  }
  return sketches
}

function playersOf(reading: Reading): Map<Player['id'], Player> {
  const handicaps = byId(reading, 'handicap', ({ player }) => player)
  const tees = byId(reading, 'playerTee', ({ player }) => player)
  const names = byId(reading, 'player', ({ player }) => player)
  return new Map(
    [...names].map(([id, { name }]) => [
      id,
      { id, name, handicap: handicaps.get(id) ?? null, tee: tees.get(id) ?? null },
    ]),
  )
}

function ballsOf(reading: Reading, players: ReadonlyMap<Player['id'], Player>): Map<BallId, Ball> {
  const places = byId(reading, 'place', ({ ball }) => ball)
  const balls = [...byId(reading, 'ball', ({ ball }) => ball)].map(([id, ball]): Ball => {
    const place = places.get(id)
    const name = ball.players.map(player => players.get(player)?.name ?? player).join(' & ')
    const { group = null, position = 0, elsewhere = [] } = place ?? {}
    return { id, players: ball.players, name, group, position, elsewhere }
  })
  return new Map(balls.map(ball => [ball.id, ball]))
}

function groupsOf(reading: Reading, balls: ReadonlyMap<BallId, Ball>, length: 9 | 18): Map<GroupId, Group> {
  const orders = byId(reading, 'order', ({ group }) => group)
  const isOnCourse = onCourse(courseOf(reading))
  const inOrder = [...balls.values()].sort((a, b) => a.position - b.position || (a.id < b.id ? -1 : 1))
  return new Map(
    [...byId(reading, 'group', ({ group }) => group)].map(([id, { name }]) => {
      const own = inOrder.filter(({ group }) => group === id).map(ball => ball.id)
      const listed = orders.get(id)?.filter(([hole]) => isOnCourse(hole)) ?? null
      return [id, { id, name, ...orderOfPlay(listed, length), balls: own }]
    }),
  )
}

/** A hole that a whole course does not have is nobody's to play; while holes are still typed in any may come. */
function onCourse({ holes }: Pick<Outing, 'holes'>): (hole: number) => boolean {
  const largest = Math.max(0, ...holes.keys())
  const isWhole = largest === holes.size && (largest === 9 || largest === 18)
  return hole => !isWhole || hole <= largest
}

function phonesOf(reading: Reading): Pick<Outing, 'phones' | 'invites'> {
  const voidKeys = byId(reading, 'voidKey', ({ device }) => device)
  const voidInvites = byId(reading, 'voidInvite', ({ invite }) => invite)
  const phones = [...byId(reading, 'key', ({ device }) => device)]
  const invites = [...byId(reading, 'invite', ({ invite }) => invite)]
  return {
    phones: new Map(phones.map(([id, grant]) => [id, { ...grant, isVoid: voidKeys.has(id) }])),
    invites: new Map(invites.map(([id, grant]) => [id, { ...grant, isVoid: voidInvites.has(id) }])),
  }
}
