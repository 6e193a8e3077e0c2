import type { HoleKey } from '#core/card/score.ts'
import { type AgreedHole, type AgreedResult, type Happenings, noHappenings } from '#core/formats/happenings.ts'
import type { BallId, GameId, GroupId, PlayerId, RulingId } from '#core/values/ids.ts'
import type { ClosedScore, FactValues, Ruling } from './facts.ts'

/** With the group whose phones say so. */
type SaidBy<T> = T & { readonly group: GroupId }

/** What groups noted about one game. */
export interface GameNotes
  extends Pick<Happenings, 'strokeConcessions' | 'holeConcessions' | 'matchConcessions' | 'presses'> {
  readonly agreedHoles: readonly SaidBy<AgreedHole>[]
  readonly agreedResults: readonly SaidBy<AgreedResult>[]
}

export const emptyGameNotes: GameNotes = {
  strokeConcessions: noHappenings.strokeConcessions,
  holeConcessions: noHappenings.holeConcessions,
  matchConcessions: noHappenings.matchConcessions,
  agreedHoles: [],
  agreedResults: [],
  presses: noHappenings.presses,
}

/** The values that player and marker stand by; null where one has not certified. */
export interface Certified {
  readonly byPlayer: readonly ClosedScore[] | null
  readonly byMarker: readonly ClosedScore[] | null
}

/** What an outing's facts say beside field, games and scores. A group is heard about its own balls alone. */
export interface Notes {
  readonly ofGames: ReadonlyMap<GameId, GameNotes>
  readonly holesOut: Happenings['holesOut']
  readonly drives: Happenings['drives']
  readonly absences: Happenings['absences']
  /** The partner said to tee off, by the hole from which it holds. */
  readonly teeShots: ReadonlyMap<BallId, ReadonlyMap<HoleKey, PlayerId>>
  /** Most likely scores of balls picked up, in strokes. */
  readonly likelyScores: ReadonlyMap<BallId, ReadonlyMap<HoleKey, number>>
  readonly markers: ReadonlyMap<BallId, PlayerId>
  readonly certified: ReadonlyMap<BallId, Certified>
  /** In order of their ids. */
  readonly rulings: readonly { readonly id: RulingId; readonly ruling: Ruling }[]
  /** As the association gave them; null where nobody has said so. */
  readonly playingConditions: FactValues['playingConditions'] | null
}
