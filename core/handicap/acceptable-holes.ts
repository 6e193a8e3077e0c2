import { unreachable } from '#core/values/assert.ts'

/** The texts of the Rules of Handicapping that differ here. */
export const handicapEditions = ['2020', '2024'] as const
export type HandicapEdition = (typeof handicapEditions)[number]

export type AcceptedAs = 'eighteen-hole-score' | 'nine-hole-score' | 'not-acceptable'

/**
 * What a round of so many holes counts as. In 2024 a round of 10 to 17 holes needs an Index, as an expected score takes
 * the place of the rest; in 2020 the 10th to 13th hole are dropped.
 * Source: Rules of Handicapping, rule 2.2; 2020: USGA; 2024: a county's page, second-hand, and USGA's notes on holes not
 * played.
 */
export function acceptedAs(edition: HandicapEdition, holesPlayed: number, hasIndex: boolean): AcceptedAs {
  switch (edition) {
    case '2020':
      if (holesPlayed >= 14) return 'eighteen-hole-score'
      return holesPlayed >= 7 ? 'nine-hole-score' : 'not-acceptable'
    case '2024':
      if (holesPlayed >= 18 || (holesPlayed >= 10 && hasIndex)) return 'eighteen-hole-score'
      return holesPlayed === 9 ? 'nine-hole-score' : 'not-acceptable'
    default:
      return unreachable(edition)
  }
}

const holesForAnIndex = 54

export const totalHoles = (holesPerScore: readonly (9 | 18)[]): number =>
  holesPerScore.reduce<number>((sum, holes) => sum + holes, 0)

/**
 * Whether scores are enough for a first Handicap Index: 54 holes in any mix of nines and eighteens. Some associations
 * issue one earlier.
 * Source: USGA, treatment of nine-hole scores of new players, 2024.
 */
export const isEnoughForAnIndex = (holesPerScore: readonly (9 | 18)[]): boolean =>
  totalHoles(holesPerScore) >= holesForAnIndex
