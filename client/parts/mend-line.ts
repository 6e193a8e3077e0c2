import { type Fact, withdrawn } from '#core/log/op.ts'
import type { FactKind, FactValues, KeyParts } from '#core/outing/facts.ts'
import type { Outing } from '#core/outing/outing.ts'
import { formatIndex } from '#core/outing/tenths.ts'
import type { TeeId } from '#core/values/ids.ts'
import { formatOrdinal } from '../words/figures.ts'
import { isWordKey, say } from '../words/say-any.ts'
import { shapeName } from '../words/sketch-text.ts'

const mended: ReadonlySet<FactKind> = new Set([
  'title',
  'hole',
  'tee',
  'green',
  'shape',
  'player',
  'handicap',
  'playerTee',
])

/** What was put right in title, course, names or handicaps, as one line; null for an act of another kind. */
export function mendLine({ value }: Fact, parts: KeyParts, who: string, outing: Outing | null): string | null {
  if (!mended.has(parts.kind)) return null
  const key = `history-${value === withdrawn ? 'no-' : ''}${parts.kind}`
  if (!isWordKey(key)) return null
  const player = (parts.player && outing?.players.get(parts.player)?.name) || String(parts.player)
  return say(key, { who, player, hole: String(parts.hole), ...fillOf(parts, value, outing) })
}

function fillOf({ kind, hole }: KeyParts, value: unknown, outing: Outing | null): Readonly<Record<string, string>> {
  if (value === withdrawn) return {}
  switch (kind) {
    case 'title':
      return { title: value as FactValues['title'] }
    case 'hole': {
      const { par, index } = value as FactValues['hole']
      return { hole: formatOrdinal(hole ?? 0), par: String(par), index: String(index) }
    }
    case 'green':
      return {}
    case 'shape':
      return { shape: shapeName(value as FactValues['shape']) }
    case 'handicap':
      return { figure: figureWords(value as FactValues['handicap']) }
    case 'playerTee':
      return { name: outing?.tees.get(value as TeeId)?.name ?? String(value) }
    default:
      return { name: (value as FactValues['player']).name }
  }
}

function figureWords(handicap: FactValues['handicap']): string {
  if (handicap.kind === 'index') return `${say('start-kind-index')} ${formatIndex(handicap.tenths)}`
  const { kind, strokes } = handicap
  return `${say(`start-kind-${kind}`)} ${strokes < 0 ? `+${-strokes}` : strokes}`
}
