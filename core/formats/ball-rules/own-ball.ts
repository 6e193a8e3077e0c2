import type { BallRule } from '#core/formats/parts.ts'
import { betterBall } from './better-ball.ts'

/** One ball a side: the better of one. */
export const ownBall: BallRule = betterBall
