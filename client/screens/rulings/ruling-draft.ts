import type { HoleAndLap, Ruling } from '#core/outing/facts.ts'
import type { BallId, GameId } from '#core/values/ids.ts'
import { say } from '../../words/say.ts'
import { type FieldFault, faultOfNumber } from '../games/game-faults.ts'

export const rulingKinds = [
  'penalty',
  'disqualified',
  'plays-off',
  'no-penalty',
] as const satisfies readonly Ruling['kind'][]

/** A ruling as it stands in the fields. */
export interface RulingDraft {
  readonly kind: Ruling['kind']
  /** Empty for nobody in particular. */
  readonly ball: string
  /** `hole/lap`, empty for the whole round. */
  readonly hole: string
  readonly strokes: string
  readonly isHoleLost: boolean
  /** Null for all games. */
  readonly games: readonly GameId[] | null
  readonly rule: string
  readonly reason: string
}

export const emptyRuling: RulingDraft = {
  kind: 'penalty',
  ball: '',
  hole: '',
  strokes: '2',
  isHoleLost: false,
  games: null,
  rule: '',
  reason: '',
}

export function faultsOfRuling({ kind, ball, strokes, isHoleLost, games }: RulingDraft): readonly FieldFault[] {
  const missing = (field: string, name: string): FieldFault[] => [
    { field, text: say('fault-missing', { field: name }) },
  ]
  return [
    ...(ball === '' && kind !== 'no-penalty' ? missing('ball', say('ruling-ball')) : []),
    ...(kind === 'penalty' ? faultOfNumber('strokes', say('ruling-strokes'), strokes, isHoleLost ? 0 : 1, 10) : []),
    ...(kind === 'plays-off' ? faultOfNumber('strokes', say('ruling-handicap'), strokes, -10, 54) : []),
    ...(games?.length === 0 ? missing('games', say('ruling-games')) : []),
  ]
}

/** The ruling of a draft without faults. */
export function rulingOfDraft({ kind, ball, hole, strokes, isHoleLost, games, rule, reason }: RulingDraft): Ruling {
  const [number = 0, lap = 0] = hole.split('/').map(Number)
  const at: HoleAndLap | null = hole === '' ? null : [number, lap]
  const common = { games, rule: rule.trim() || null, reason: reason.trim() || null }
  switch (kind) {
    case 'no-penalty':
      return { ...common, kind, ball: ball === '' ? null : (ball as BallId) }
    case 'penalty':
      return { ...common, kind, ball: ball as BallId, hole: at, strokes: Number(strokes), holeLost: isHoleLost }
    case 'disqualified':
      return { ...common, kind, ball: ball as BallId, hole: at }
    case 'plays-off':
      return { ...common, kind, ball: ball as BallId, strokes: Number(strokes) }
  }
}
