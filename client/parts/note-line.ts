import { type Op, withdrawn } from '#core/log/op.ts'
import type { FactKind, KeyParts, Ruling } from '#core/outing/facts.ts'
import { factOfMethod } from '#core/outing/game-settings.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import { formatOrdinal } from '../words/figures.ts'
import { isWordKey, say } from '../words/say-any.ts'
import { mendLine } from './mend-line.ts'
import { rollUpLine } from './roll-up-line.ts'
import { rulingWords } from './ruling-words.ts'

/** The kinds of fact that make a game. */
const gameKinds: ReadonlySet<FactKind> = new Set(['gameFormat', 'gameSides', ...Object.values(factOfMethod)])

/** A concession is final. */
const conceded: ReadonlySet<FactKind> = new Set(['concededStroke', 'concededHole', 'concededMatch'])

export const isConcession = ({ facts }: Op): boolean =>
  facts.some(({ key, value }) => value !== withdrawn && conceded.has(parseKey(key)?.kind ?? 'title'))

/** One act beside the scores as one line; null for an act of another kind. */
export function noteLine(op: Op, who: string, outing: Outing | null): string | null {
  const [fact] = op.facts
  const parts = fact && parseKey(fact.key)
  if (!fact || !parts) return null
  const isGone = fact.value === withdrawn
  if (parts.kind === 'ruling') {
    return isGone
      ? say('history-unruled', { who })
      : say('history-ruled', { who, ruling: rulingWords(outing, fact.value as unknown as Ruling) })
  }
  const come = rollUpLine(op, who)
  if (come !== null) return come
  const mended = mendLine(fact, parts, who, outing)
  if (mended !== null) return mended
  const fill = { who, ...fillOf(parts, outing) }
  if (gameKinds.has(parts.kind)) return gameLine(op, parts, isGone, fill)
  const key = `history-${isGone ? 'no-' : ''}${parts.kind}`
  return isWordKey(key) ? say(key, fill) : null
}

function gameLine(op: Op, { kind }: KeyParts, isGone: boolean, fill: Readonly<Record<string, string>>): string {
  if (kind !== 'gameFormat') return say('history-game-changed', fill)
  if (isGone) return say('history-game-gone', fill)
  const [format] = op.facts
  const name = String(format?.value)
  return say('history-game-added', { ...fill, game: isWordKey(name) ? say(name) : name })
}

function fillOf({ ball, hole, game }: KeyParts, outing: Outing | null): Readonly<Record<string, string>> {
  const format = outing?.games.find(({ id }) => id === game)?.format
  const name = format ?? game ?? ''
  return {
    player: (ball && outing?.balls.get(ball)?.name) || String(ball),
    hole: formatOrdinal(hole ?? 0),
    // A game taken away goes by its id, which is its format's name as a rule.
    game: isWordKey(name) ? say(name) : name,
  }
}
