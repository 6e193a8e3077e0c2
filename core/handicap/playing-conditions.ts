/** The results that a playing conditions calculation can have, in strokes over eighteen holes; positive played harder. */
export const playingConditionsValues = [-1, 0, 1, 2, 3] as const
/** Given, not computed: the expected-score curves and thresholds behind it are not public. 0 where nothing is given. */
export type PlayingConditions = (typeof playingConditionsValues)[number]

const scoresNeeded = 8

/**
 * Whether a figure can be the day's playing conditions.
 * Source: Rules of Handicapping, rule 5.6; R&A and USGA; 2020 and 2024.
 */
export const isPlayingConditions = (value: number): value is PlayingConditions =>
  playingConditionsValues.some(each => each === value)

/**
 * What is known of the playing conditions from the number of scores alone: zero below eight acceptable scores of players
 * with an Index of 36.0 or less, else `null`, as only the association can say.
 * Source: Rules of Handicapping, rule 5.6; R&A and USGA; 2020 and 2024.
 */
export const playingConditionsFromSample = (acceptableScores: number): 0 | null =>
  acceptableScores < scoresNeeded ? 0 : null
