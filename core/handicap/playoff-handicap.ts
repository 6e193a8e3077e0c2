import { fraction, roundHalfUp } from '#core/values/fraction.ts'

/**
 * Strokes for a play-off of fewer than eighteen holes: the same share of the Playing Handicap, a half or more counted in
 * full, less dropped.
 * Source: advice on deciding ties with handicaps; reprint of the text before 2019. In a match that goes on, strokes
 * simply fall on the same holes again: Rules of Golf, rule 3.2c; R&A; 2019.
 */
export const playoffHandicap = (playingHandicap: number, playoffHoles: number): number =>
  roundHalfUp(fraction(playingHandicap * playoffHoles, 18))
