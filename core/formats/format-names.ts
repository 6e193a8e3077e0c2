/** Every row of the table of formats, in the order a list shows them. */
export const formatNames = [
  'stroke-play-gross',
  'stroke-play-net',
  'stableford',
  'singles-match',
  'four-ball-match',
  'three-ball-match',
  'three-ball-match-from-lowest',
  'best-ball-match',
  'foursomes-match',
  'greensomes-match',
  'chapman-match',
] as const

export type FormatName = (typeof formatNames)[number]
