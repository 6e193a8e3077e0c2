import type { HoleAndLap, Ruling } from '#core/outing/facts.ts'
import type { RulingOutcome } from '#core/outing/ruling-outcome.ts'
import type { BallId, GameId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import { type FieldFault, faultOfNumber } from '../games/game-faults.ts'

export const rulingKinds = [
  'penalty',
  'disqualified',
  'plays-off',
  'net-off',
  'no-penalty',
] as const satisfies readonly Ruling['kind'][]

/** A ruling as it stands in the fields. */
export interface RulingDraft {
  readonly kind: Ruling['kind']
  /** Empty for nobody in particular. */
  readonly ball: string
  /** Disqualified with it; empty for nobody. */
  readonly also: string
  /** The hole from which a late ball plays, `hole/lap`; empty where nobody is late. */
  readonly joinsAt: string
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
  also: '',
  joinsAt: '',
  hole: '',
  strokes: '2',
  isHoleLost: false,
  games: null,
  rule: '',
  reason: '',
}

/** What the fields take over from a proposal; the hole of a penalty stays what was chosen. */
export function draftOfOutcome(outcome: RulingOutcome): Partial<RulingDraft> {
  const { kind, rule } = outcome
  switch (kind) {
    case 'no-penalty':
      return { kind, rule }
    case 'disqualified':
      return { kind, rule, hole: '' }
    case 'plays-off':
    case 'net-off':
      return { kind, rule, strokes: String(outcome.strokes) }
    case 'penalty': {
      const penalty = { kind, rule, strokes: String(outcome.strokes), isHoleLost: outcome.holeLost }
      return outcome.on === 'round' ? { ...penalty, hole: '' } : penalty
    }
  }
}

export function faultsOfRuling(draft: RulingDraft): readonly FieldFault[] {
  const { kind, ball, joinsAt, strokes, isHoleLost, games } = draft
  const missing = (field: string, name: string): FieldFault[] => [
    { field, text: say('fault-missing', { field: name }) },
  ]
  return [
    ...(ball === '' && (kind !== 'no-penalty' || joinsAt !== '') ? missing('ball', say('ruling-ball')) : []),
    ...(kind === 'penalty' ? faultOfNumber('strokes', say('ruling-strokes'), strokes, isHoleLost ? 0 : 1, 10) : []),
    ...(kind === 'plays-off' || kind === 'net-off'
      ? faultOfNumber('strokes', say('ruling-handicap'), strokes, -10, 54)
      : []),
    ...(games?.length === 0 ? missing('games', say('ruling-games')) : []),
  ]
}

/** The rulings of a draft without faults: one, or one for each of two who are disqualified together. */
export function rulingsOfDraft(draft: RulingDraft): readonly Ruling[] {
  const { kind, ball, also } = draft
  const isBoth = kind === 'disqualified' && also !== '' && also !== ball
  return [rulingOfDraft(draft), ...(isBoth ? [rulingOfDraft({ ...draft, ball: also })] : [])]
}

function rulingOfDraft({ kind, ball, hole, strokes, isHoleLost, games, rule, reason }: RulingDraft): Ruling {
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
    case 'net-off':
      return { ...common, kind, ball: ball as BallId, strokes: Number(strokes) }
  }
}
