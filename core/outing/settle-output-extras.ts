import type { CertificationDifference } from '#core/card/certification.ts'
import type { HoleScore } from '#core/card/score.ts'
import type { AcceptedAs, HandicapEdition } from '#core/handicap/acceptable-holes.ts'
import type { NotPlayedMethod } from '#core/handicap/adjusted-gross.ts'
import type { FieldSizeMethod } from '#core/handicap/allowance.ts'
import type { FigureGiven, TerritoryNotCovered } from '#core/handicap/coverage.ts'
import type { PlayingConditions } from '#core/handicap/playing-conditions.ts'
import type { HandicappingGap } from './handicapping.ts'
import type { SettledHole } from './settle-output-games.ts'

/** What one of the two certified; it stands while the settled values are those. */
export interface SettledCertifier {
  readonly hasCertified: boolean
  readonly stands: boolean
}

export interface SettledCertificationHole extends SettledHole {
  /** What each record says: nothing, one value, or several that differ. */
  readonly card: readonly HoleScore[]
  readonly marker: readonly HoleScore[]
  readonly desk: readonly HoleScore[]
  readonly settled: HoleScore | null
  readonly byPlayer: HoleScore | null
  readonly byMarker: HoleScore | null
  readonly differences: readonly CertificationDifference[]
}

/** A card hole by hole from its records, with what player and marker certified. */
export interface SettledCertification {
  readonly ball: string
  /** The player who keeps the marker's record; null where nobody is named. */
  readonly markedBy: string | null
  readonly isComplete: boolean
  readonly isCertified: boolean
  readonly player: SettledCertifier
  readonly marker: SettledCertifier
  /** The holes that the card owes, in order of play. */
  readonly holes: readonly SettledCertificationHole[]
}

export interface SettledDifferential {
  readonly holes: 9 | 18
  /** Decimal text of at most six places. */
  readonly unrounded: string
  /** To a tenth, "12.3"; null for nine holes, which are added to another score first. */
  readonly rounded: string | null
}

export interface SettledAdjustedScore {
  readonly notPlayed: NotPlayedMethod
  readonly adjustedGross: number
  readonly holesLeftOut: number
  readonly differential: SettledDifferential | null
}

/** A ball's score for handicapping; an official figure comes from an authorised association alone. */
export interface SettledHandicapping {
  readonly ball: string
  readonly player: string | null
  readonly unofficial: true
  /** Full and whole. */
  readonly courseHandicap: number | null
  readonly holesPlayed: number
  readonly acceptedAs: Readonly<Record<HandicapEdition, AcceptedAs>>
  readonly playingConditions: { readonly given: PlayingConditions | null; readonly used: PlayingConditions }
  readonly holes: readonly (SettledHole & {
    readonly par: number
    readonly strokes: number | null
    readonly most: number | null
    readonly score: number | 'started' | 'not-played' | null
  })[]
  /** One for each method of holes not played; empty while the score is not whole. */
  readonly scores: readonly SettledAdjustedScore[]
  readonly gaps: readonly { readonly code: HandicappingGap['code']; readonly at: SettledHole | null }[]
}

/** The recommended allowance of a game by the size of its field, for the committee to choose. */
export interface SettledAllowanceAdvice {
  readonly game: string
  readonly fieldSize: number
  readonly percents: readonly { readonly method: FieldSizeMethod; readonly percent: number }[]
}

/** What no figure here is right for, and what is never worked out. */
export interface SettledCoverage {
  readonly territoriesNotCovered: readonly TerritoryNotCovered[]
  readonly figuresGiven: readonly FigureGiven[]
}
