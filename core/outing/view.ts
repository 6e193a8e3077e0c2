import type { SettledCard } from '#core/card/settle-card.ts'
import { changedKeys, keysOf, type LogState, standingsOf } from '#core/log/fold.ts'
import type { BallId } from '#core/values/ids.ts'
import { settledCards } from './cards-of.ts'
import type { FactKind } from './facts.ts'
import { parseKey } from './keys.ts'
import { type Levels, levelsAfter, levelsOf } from './levels.ts'
import type { Outing } from './outing.ts'
import { outingOf } from './outing-of.ts'
import { type IsKnownValue, readKeys } from './reading.ts'

/** A state of the log, what it means, and the levels of its cards: what scoring a hole shows, and what results are made of. */
export interface OutingView {
  readonly state: LogState
  readonly outing: Outing
  readonly levels: Levels
  /** Of what makes a ball's card, the keys that somebody has written; null until the first score after it. */
  readonly cardKeys: KeysByBall | null
}

export function viewOf(state: LogState, isKnown: IsKnownValue): OutingView {
  const outing = outingOf(state, isKnown)
  return { state, outing, levels: levelsOf(outing), cardKeys: null }
}

/**
 * The view of a later state; the same as `viewOf` gives, to the last digit. Where nothing but scores changed, which is
 * nearly always, only the cards and the lines that they enter are made new.
 */
export function viewAfter(before: OutingView, state: LogState, isKnown: IsKnownValue): OutingView {
  if (state === before.state) return before
  const changed = changedKeys(before.state, state)
  const balls = ballsScored(before.state, state, changed, isKnown)
  if (balls === null) return viewOf(state, isKnown)
  const cardKeys = withKeys(before.cardKeys ?? keysOfCards(keysOf(before.state)), keysOfCards(changed))
  const keys = [...balls].flatMap(ball => [...(cardKeys.get(ball) ?? [])])
  const settled = settledCards(readKeys(state, isKnown, keys), balls)
  const outing = outingWithCards(before.outing, settled)
  const cards = new Map([...settled].map(([ball, { card }]) => [ball, card]))
  return { state, outing, levels: levelsAfter(before.levels, outing, cards), cardKeys }
}

/** The balls whose scores differ between two states; null when anything else does. */
function ballsScored(
  before: LogState,
  after: LogState,
  changed: readonly string[],
  isKnown: IsKnownValue,
): Set<BallId> | null {
  const balls = new Set<BallId>()
  for (const key of changed) {
    const parts = parseKey(key)
    if (parts?.kind !== 'score' || parts.ball === null) return null
    const values = [...standingsOf(before, key), ...standingsOf(after, key)]
    if (!values.every(({ value }) => isKnown('score', value))) return null
    balls.add(parts.ball)
  }
  return balls
}

const cardKinds: ReadonlySet<FactKind> = new Set(['score', 'place', 'closeBall'])

function keysOfCards(keys: Iterable<string>): Map<BallId, Set<string>> {
  const found = new Map<BallId, Set<string>>()
  for (const key of keys) {
    const parts = parseKey(key)
    if (parts === null || parts.ball === null || !cardKinds.has(parts.kind)) continue
    const own = found.get(parts.ball)
    if (own) own.add(key)
    else found.set(parts.ball, new Set([key]))
  }
  return found
}

type KeysByBall = ReadonlyMap<BallId, ReadonlySet<string>>

function withKeys(before: KeysByBall, added: KeysByBall): KeysByBall {
  const all = new Map(before)
  for (const [ball, keys] of added) all.set(ball, new Set([...(before.get(ball) ?? []), ...keys]))
  return all
}

/** Late and stray scores stay in the order of the balls. */
function outingWithCards(outing: Outing, settled: ReadonlyMap<BallId, SettledCard>): Outing {
  const cards = new Map(outing.cards)
  for (const [ball, { card }] of settled) if (cards.has(ball)) cards.set(ball, card)
  const inOrder = <T extends { readonly ball: BallId }>(
    list: readonly T[],
    made: (of: SettledCard) => Omit<T, 'ball'>[],
  ) =>
    [...outing.balls.keys()].flatMap(ball => {
      const own = settled.get(ball)
      return own === undefined
        ? list.filter(each => each.ball === ball)
        : made(own).map(each => ({ ...each, ball }) as T)
    })
  return {
    ...outing,
    cards,
    late: inOrder(outing.late, ({ late }) => [...late]),
    stray: inOrder(outing.stray, ({ stray }) => [...stray]),
  }
}
