import type { BallRule } from '#core/formats/parts.ts'

/** Every ball of the side counts. Common practice; Rules of Handicapping, Appendix C, names the total score of two. */
export const allBalls: BallRule = { countOf: ({ balls }) => balls, disqualifiedWith: 'ball' }
