/**
 * How far a figure can be trusted: `published` was read where it is published, `second-hand` in agreeing copies of that,
 * `derived` is worked out from such figures, `memory` was not looked up, `own` is our default where nobody publishes one.
 */
export const confidences = ['published', 'second-hand', 'derived', 'memory', 'own'] as const
export type Confidence = (typeof confidences)[number]

/** Where the figures of the plan come from, as a reader would look them up. */
export const planSources = {
  'tour-baseline':
    'Broadie M. Interfaces 42(2), 2012, on golfers of the PGA TOUR; working paper of 8 April 2011, appendix (2003-2010)',
  'putts-gained': 'Broadie M. Putts gained: measuring putting on the PGA TOUR. Columbia, draft of 13 January 2011',
  'putting-model':
    'Broadie M. Working paper of 2011, sections 3.1 and 3.3: tee regressions, putting model, 90-golfer anchors',
  'putting-data': 'Berry 1996 and Broadie 2018, 31 distances, in Gelman and others, Bayesian workflow',
  'approach-column': 'Broadie M. Magazine column on approach shots of the 90-golfer, reproduced by a club magazine',
  'drives-offline':
    'Broadie M. Every Shot Counts, 2014, figure 6.3 and the example with out of bounds on the right, by its readers',
  'approach-misses': 'James N, Rees GD. Int J Sports Sci Coaching 3(S1), 2008, abstract',
  'shot-patterns': 'Ko S. PhD thesis, Columbia 2012, abstract',
  'amateur-drives': 'R&A and USGA, distance report, United Kingdom amateurs (2018), quoted in the press',
  'model-players': 'USGA and R&A, Course Rating: scratch and bogey player',
  'length-formulas': 'USGA Course Rating, length formulas, in four agreeing copies',
  'rating-manual': 'Course Rating System Manual, 2020 and later, in a national edition',
  'exceptional-odds': 'USGA Handicap System, Appendix E, odds of exceptional scores',
  'ball-flight': 'Smits AJ, Smith DR. A new aerodynamic model of a golf ball in flight. Science and Golf II, 1994',
  'course-greens': 'Superintendents’ association, facts about greens',
  'average-golfer': 'Riccio LJ. A statistical analysis of the average golfer. Science and Golf I, 1990, in two copies',
  'wind-percent': 'Golf Monthly, How to calculate distance in the wind',
  'wind-percent-plus': 'A. Rice, teaching professional, notes on playing in the wind',
  'wind-yard': 'Golf Digest, The wind formula',
  'heat-and-height': 'golf.com, How heat and altitude affect distance',
  'height-percent': 'healthfully.com, Calculate golf yardages by altitude',
  'worked-out': 'Worked out from the published figures of this list',
  ours: 'Our own: no published figure was found',
} as const
export type PlanSource = keyof typeof planSources

/** What every table and default of the plan says of itself. */
export interface Evidence {
  readonly confidence: Confidence
  readonly source: PlanSource
}
