import type { Fact, Op } from '#core/log/op.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { scoreKey } from '#core/outing/keys.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import type { DeviceId, GroupId, LogId, OpId } from '#core/values/ids.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'

/** A society day: 144 players in 36 groups, every hole in, some of it corrected, some of it picked up. */

export const players = 144
const log = 'day' as LogId

/** The same numbers every time. */
function dice(seed: number): (sides: number) => number {
  let state = seed
  return sides => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((state / 2 ** 32) * sides)
  }
}

const ballOf = (player: number): string => `p${player}`
const groupOf = (player: number): GroupId => `g${Math.floor(player / 4)}` as GroupId

/** With these games over all players. */
export function dayWith(games: readonly object[]): PlainOuting {
  const all = Array.from({ length: players }, (_, player) => player)
  return {
    sixThrees: 'outing',
    version: 1,
    form: 'plain',
    length: 18,
    course: {
      name: quillmoor.name,
      holes: quillmoor.pars.map((par, place) => ({ par, index: quillmoor.indexes[place] ?? 1 })),
    },
    players: all.map(player => ({
      id: ballOf(player),
      name: `Player ${player}`,
      handicap: { courseHandicap: player % 37 },
    })),
    groups: Array.from({ length: players / 4 }, (_, group) => ({
      id: `g${group}`,
      name: `Group ${group + 1}`,
      balls: [0, 1, 2, 3].map(place => ballOf(group * 4 + place)),
    })),
    games,
  } as unknown as PlainOuting
}

export const everyBall = Array.from({ length: players }, (_, player) => [ballOf(player)])

/** The ops of the day, as they came: the start, then hole by hole a score a player; one in thirty is corrected. */
export function opsOfDay(file: PlainOuting): Op[] {
  const roll = dice(7)
  const facts = factsOfPlain(file).map((fact): Fact => ({ ...fact, replaces: [] }))
  const ops: Op[] = [opOf('desk', 1, 1, null, facts)]
  const counts = new Map<string, number>()
  const write = (player: number, hole: number, replaces: readonly OpId[]): OpId => {
    const device = `d${Math.floor(player / 4)}`
    const n = (counts.get(device) ?? 0) + 1
    counts.set(device, n)
    const value = scoreFor(roll, quillmoor.pars[hole - 1] ?? 4)
    const at = { group: groupOf(player), ball: ballOf(player), hole, lap: 1, record: 'card' } as const
    ops.push(opOf(device, n, ops.length + 1, groupOf(player), [{ key: scoreKey(at), value, replaces }]))
    return `${device}.${n}` as OpId
  }
  for (let hole = 1; hole <= 18; hole++) {
    for (let player = 0; player < players; player++) {
      const written = write(player, hole, [])
      if (roll(30) === 0) write(player, hole, [written])
    }
  }
  return ops
}

function scoreFor(roll: (sides: number) => number, par: number): number | 'picked-up' {
  return roll(40) === 0 ? 'picked-up' : Math.max(1, par - 1 + roll(4))
}

const opOf = (device: string, n: number, tick: number, scope: GroupId | null, facts: readonly Fact[]): Op => ({
  log,
  scope,
  device: device as DeviceId,
  n,
  tick,
  at: 0,
  act: scope === null ? 'outing started' : 'score entered',
  facts,
})

/** One more score of the day: player `step` of the field writes their 18th anew. */
export function oneMore(before: readonly Op[], step: number, replaces: readonly OpId[]): Op {
  const player = step % players
  const device = `d${Math.floor(player / 4)}`
  const n = 1 + before.filter(op => op.device === device).length
  const at = { group: groupOf(player), ball: ballOf(player), hole: 18, lap: 1, record: 'card' } as const
  return opOf(device, n, before.length + 1, groupOf(player), [{ key: scoreKey(at), value: 3 + (step % 4), replaces }])
}

export const lastKeyOf = (step: number): string =>
  scoreKey({ group: groupOf(step % players), ball: ballOf(step % players), hole: 18, lap: 1, record: 'card' })

/** Pairs of each group, one side each. */
export const everyPair = Array.from({ length: players / 2 }, (_, pair) => [ballOf(pair * 2), ballOf(pair * 2 + 1)])
