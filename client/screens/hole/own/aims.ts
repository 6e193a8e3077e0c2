import type { LevelCard } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'

/** What a player means to do, three by three. It never leaves this phone. */
export interface Aims {
  /** Strokes for each three in order of play, gross. */
  readonly targets: readonly number[]
  /** One thought of the player's own choosing, read before every three; may be empty. */
  readonly cue: string
}

export const longestCue = 80
/** Three holes take at least as many strokes; the most is far above any level. */
export const targetRange = { min: 3, max: 60 } as const

/** Every ball's aims as they are kept: what does not read as such is left out. */
export function parseAims(text: string | null): ReadonlyMap<BallId, Aims> {
  try {
    const kept: unknown = JSON.parse(text ?? '[]')
    if (!Array.isArray(kept)) return new Map()
    return new Map(kept.flatMap(each => (isKept(each) ? [[each[0] as BallId, each[1]] as const] : [])))
  } catch {
    return new Map()
  }
}

export const formatAims = (aims: ReadonlyMap<BallId, Aims>): string => JSON.stringify([...aims])

function isKept(each: unknown): each is readonly [string, Aims] {
  if (!Array.isArray(each) || typeof each[0] !== 'string') return false
  const { targets, cue } = (each[1] ?? {}) as Partial<Aims>
  return Array.isArray(targets) && targets.every(isTarget) && typeof cue === 'string' && cue.length <= longestCue
}

const isTarget = (value: unknown): boolean =>
  Number.isInteger(value) && Number(value) >= targetRange.min && Number(value) <= targetRange.max

/** The level of each three: what keeps the player's handicap. */
export const proposedTargets = ({ threes }: LevelCard): readonly number[] =>
  threes.map(({ level }) => Math.min(targetRange.max, Math.max(targetRange.min, level)))

/** One target moved by a stroke, inside the range. */
export const withTarget = ({ targets, cue }: Aims, place: number, strokes: number): Aims => ({
  cue,
  targets: targets.map((each, at) =>
    at === place ? Math.min(targetRange.max, Math.max(targetRange.min, strokes)) : each,
  ),
})
