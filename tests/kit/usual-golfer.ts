import type { RatedGender } from '#core/handicap/slope.ts'
import { emptyLog } from '#core/log/fold.ts'
import { type Golfer, golferOf } from '#core/plan/golfer.ts'
import { planOf } from '#core/plan/plan-of.ts'

const emptyBag = planOf(emptyLog, () => true)

/** A golfer of whom only the Index is known. */
export const usualGolfer = (handicapIndex: number, gender: RatedGender): Golfer =>
  golferOf(emptyBag, { handicapIndex, gender, carriesAre: 'good-strike', own: new Map() })
