import type { ContestName } from '#core/formats/contest-names.ts'
import type { Contest } from '#core/formats/game-input.ts'
import { match } from './match.ts'
import { nassau } from './nassau.ts'
import { sixThrees } from './six-threes.ts'
import { sixes } from './sixes.ts'
import { skins } from './skins.ts'
import { splitPointsBy } from './split-points.ts'
import { total } from './total.ts'

/** Every contest. The rows of formats name theirs, so that what scoring a hole needs of a format can do without it. */
export const contestTable: Readonly<Record<ContestName, Contest>> = {
  total,
  match,
  'match-of-each-pair': match,
  skins,
  'nine-points': splitPointsBy('nine-points'),
  'split-sixes': splitPointsBy('split-sixes'),
  nassau,
  sixes,
  'six-threes': sixThrees,
}
