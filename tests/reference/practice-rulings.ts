import { firstPlaceOfLatePartner } from '#core/formats/rulings/late-partner.ts'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'
import { type CardForm, type ReturnedHole, ruleOnReturnedHole } from '#core/formats/rulings/returned-score.ts'
import { ruleOnTradedHoles } from '#core/formats/rulings/traded-holes.ts'
import { ruleOnWrittenSum } from '#core/formats/rulings/written-sum.ts'
import { outcomeOfMatchHandicap } from '#core/outing/ruling-outcome.ts'
import type { BallId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { rulingOn } from '#tests/kit/ruling-on.ts'
import { valueAt } from './json-path.ts'

/** What a case expects of a ruling: no card shows it, so the function that rules is asked. */
export interface PracticeRuling {
  readonly id: string
  readonly expected: string
  /** Why it is no result of an outing. */
  readonly why: string
  readonly ruled: (setup: Json) => Json
}

const scoreMade = 'what was made stands on no card'
const declared = 'what was declared stands on no card'

const stableford: CardForm = { kind: 'stableford' }

/** A par 4 on which a playing handicap of 15 has one stroke: the 10th and the 18th of the cases. */
function returnedHole(setup: Json): ReturnedHole {
  const [returned, actual] = [valueAt(setup, 'returned'), valueAt(setup, 'actual')].map(Number)
  return { par: 4, strokes: 1, returned: returned ?? null, actual: actual ?? 0, reason: 'other', isBeforeClose: true }
}

const isDisqualified = (form: CardForm) => (setup: Json) =>
  ruleOnReturnedHole(form, returnedHole(setup)).code === 'disqualified'

/** The handicap that B declared, noticed after the opponent has played. */
function matchHandicap(setup: Json) {
  const [correct, said] = [Number(valueAt(setup, 'B_entitled')), Number(valueAt(setup, 'B_declared'))]
  const ruling = ruleOnMatchHandicap({ declared: said, correct, affectsStrokes: true, isCorrectedInTime: false })
  const fact = rulingOn('b' as BallId, [1, 1], null, outcomeOfMatchHandicap(correct, ruling))
  return { ruling, fact: fact as unknown as Json }
}

export const practiceRulings: readonly PracticeRuling[] = [
  { id: 'ST-04', expected: 'disqualified', why: scoreMade, ruled: isDisqualified(stableford) },
  { id: 'ST-05', expected: 'Stableford.disqualified', why: scoreMade, ruled: isDisqualified(stableford) },
  {
    id: 'ST-05',
    expected: 'net medal.disqualified',
    why: scoreMade,
    ruled: isDisqualified({ kind: 'stroke-play' }),
  },
  {
    id: 'ST-06',
    expected: 'penalty',
    why: 'the points that a marker wrote are kept nowhere',
    ruled: () => (ruleOnWrittenSum(30).code === 'no-penalty' ? null : 'penalty'),
  },
  {
    id: 'MP-04',
    expected: 'continues',
    why: declared,
    ruled: setup => valueAt(matchHandicap(setup).fact, 'kind') === 'plays-off',
  },
  {
    id: 'MP-05',
    expected: 'B',
    why: declared,
    ruled: setup => `${matchHandicap(setup).ruling.code} from the match`,
  },
  {
    id: 'MP-21',
    expected: 'knew',
    why: 'an agreement before play is no fact of an outing',
    ruled: () => words[ruleOnTradedHoles(true)],
  },
  {
    id: 'MP-21',
    expected: 'did_not_know',
    why: 'an agreement before play is no fact of an outing',
    ruled: () => words[ruleOnTradedHoles(false)],
  },
  {
    id: 'FB-03',
    expected: 'B_counts_from',
    why: 'when somebody came is no fact; the hole from which the ball takes part is',
    ruled: () => firstPlaceOfLatePartner('stroke-play', { place: 2, partnerHasStarted: true, anyoneHasStarted: true }),
  },
]

const words = { 'both-disqualified': 'both disqualified', 'stands-as-played': 'match stands as played' } as const
