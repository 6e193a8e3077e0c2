import type { HoleOutMethod } from '#core/formats/happenings.ts'
import type { PlayingConditions } from '#core/handicap/playing-conditions.ts'
import type { BallId, GameId, GroupId, PlayerId, RulingId } from '#core/values/ids.ts'
import type { Certifier, ClosedScore, HoleAndLap } from './facts.ts'

/** A hole of the course; lap 1 when left out. */
interface AtHole {
  readonly hole: number
  readonly lap?: number | undefined
}

/** A side is named by any ball of it; `to` may be left out where the game has two sides alone. */
export type PlainConcession =
  /** `score` is what the ball has with its next stroke conceded. */
  | (AtHole & { readonly what: 'stroke'; readonly game: GameId; readonly ball: BallId; readonly score: number })
  | (AtHole & { readonly what: 'hole'; readonly game: GameId; readonly by: BallId; readonly to?: BallId | undefined })
  | { readonly what: 'match'; readonly game: GameId; readonly by: BallId; readonly to?: BallId | undefined }

/** What two sides agreed; `won` names a ball of the two, null for a half. */
interface PlainAgreed {
  readonly game: GameId
  /** The group that says so, the one of the first ball when left out. */
  readonly group?: GroupId | undefined
  readonly between: readonly [BallId, BallId]
  readonly won: BallId | null
}

export type PlainAgreedHole = PlainAgreed & AtHole

/** `by` holes up with `left` to play; zero and zero for a half. */
export type PlainAgreedResult = PlainAgreed & { readonly by: number; readonly left: number }

/** The side of this ball opens a new match from the hole on. */
export type PlainPress = AtHole & { readonly game: GameId; readonly by: BallId }

export type PlainHoleOut = AtHole & { readonly counts: HoleOutMethod; readonly reason?: string | undefined }

/** By hole of the course from 1; null is nothing written. */
export interface PlainByHole<T> {
  readonly ball: BallId
  /** 1 when left out. */
  readonly lap?: number | undefined
  readonly holes: readonly (T | null)[]
}

/** The partner of a foursomes ball who tees off on the hole; from there the two take turns. */
export type PlainTeeShot = AtHole & { readonly ball: BallId; readonly player: PlayerId }

/** With neither hole it took part in none. */
export interface PlainAbsence {
  readonly ball: BallId
  /** The first hole it took part in; from the start when left out. */
  readonly joinedAt?: HoleAndLap | undefined
  /** The first hole it took no part in any more. */
  readonly leftAt?: HoleAndLap | undefined
  /** False when left out. */
  readonly withdrawn?: boolean | undefined
  readonly reason?: string | undefined
}

export interface PlainMarker {
  readonly ball: BallId
  readonly marker: PlayerId
}

export interface PlainCertified {
  readonly ball: BallId
  readonly by: Certifier
  /** What is certified; when left out the file's own scores, the marker's record first for the marker, else the card. */
  readonly scores?: readonly ClosedScore[] | undefined
}

interface PlainRuled {
  readonly id: RulingId
  /** Every game of the outing when left out. */
  readonly games?: readonly GameId[] | undefined
  /** The rule as it is cited. */
  readonly rule?: string | undefined
  readonly reason?: string | undefined
}

/** A hole left out is the whole round or game. */
export type PlainRuling =
  | (PlainRuled & { readonly kind: 'no-penalty'; readonly ball?: BallId | undefined })
  | (PlainRuled & {
      readonly kind: 'penalty'
      readonly ball: BallId
      readonly hole?: number | undefined
      readonly lap?: number | undefined
      readonly strokes: number
      /** In a match, in place of strokes; false when left out. */
      readonly holeLost?: boolean | undefined
    })
  | (PlainRuled & {
      readonly kind: 'disqualified'
      readonly ball: BallId
      readonly hole?: number | undefined
      readonly lap?: number | undefined
    })
  | (PlainRuled & { readonly kind: 'plays-off' | 'net-off'; readonly ball: BallId; readonly strokes: number })

/** Of the day, in strokes over eighteen holes, as the association gave them. */
export interface PlainPlayingConditions {
  readonly strokes: PlayingConditions
  readonly reason?: string | undefined
}

/** What a file says beside field, games and scores; each list may be left out. */
export interface PlainNotes {
  readonly concessions?: readonly PlainConcession[] | undefined
  readonly agreedHoles?: readonly PlainAgreedHole[] | undefined
  readonly agreedResults?: readonly PlainAgreedResult[] | undefined
  readonly presses?: readonly PlainPress[] | undefined
  readonly holesOut?: readonly PlainHoleOut[] | undefined
  /** Whose drive a ball of several players used. */
  readonly drives?: readonly PlainByHole<PlayerId>[] | undefined
  readonly teeShots?: readonly PlainTeeShot[] | undefined
  /** Most likely scores of holes picked up, for handicapping alone. */
  readonly likelyScores?: readonly PlainByHole<number>[] | undefined
  readonly absences?: readonly PlainAbsence[] | undefined
  readonly markers?: readonly PlainMarker[] | undefined
  readonly certified?: readonly PlainCertified[] | undefined
  readonly rulings?: readonly PlainRuling[] | undefined
  readonly playingConditions?: PlainPlayingConditions | undefined
}

type PlainLists = Omit<PlainNotes, 'playingConditions'>

/** Every list, empty ones too. */
export type EveryPlainNote = { readonly [K in keyof PlainLists]-?: NonNullable<PlainLists[K]> } & Pick<
  PlainNotes,
  'playingConditions'
>
