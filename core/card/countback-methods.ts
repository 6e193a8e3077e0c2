/** What is counted over the holes of a countback; bodies and terms differ for net scores. */
export const countbackMethods = ['gross', 'share-of-handicap', 'strokes-as-they-fall', 'points'] as const
export type CountbackMethod = (typeof countbackMethods)[number]

/** Which holes are counted, in which order. */
export const countbackSchemes = [
  'nine-six-three-one',
  'nine-holes',
  'threes-from-last',
  'threes-from-last-of-nine',
] as const
export type CountbackScheme = (typeof countbackSchemes)[number]

/** Whether the last nine are the card's, wherever a group started, or the last nine it played. */
export const countbackHoles = ['card-order', 'order-of-play'] as const
export type CountbackHoles = (typeof countbackHoles)[number]
