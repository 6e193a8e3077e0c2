import type { BallRule } from '#core/formats/parts.ts'

/**
 * The better of the side's balls: only one needs to finish the hole. What disqualifies a partner from the round
 * disqualifies the side.
 * Source: Rules of Golf, rule 23.2a; R&A and USGA; 2019 and 2023. Disqualification: rule 23.8a, from memory.
 */
export const betterBall: BallRule = { countOf: () => 1, disqualifiedWith: 'side' }
