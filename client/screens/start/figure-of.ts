import type { Handicap } from '#core/outing/facts.ts'
import { formatIndex } from '#core/outing/tenths.ts'
import type { PlayerDraft } from './draft.ts'

/** A handicap as it is typed: a plus with its sign. */
export function figureOf(handicap: Handicap | null): Pick<PlayerDraft, 'kind' | 'figure'> {
  if (handicap === null) return { kind: 'index', figure: '' }
  if (handicap.kind === 'index') return { kind: 'index', figure: formatIndex(handicap.tenths) }
  return { kind: handicap.kind, figure: formatStrokes(handicap.strokes) }
}

const formatStrokes = (strokes: number): string => (strokes < 0 ? `+${-strokes}` : String(strokes))
