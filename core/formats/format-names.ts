/** Every row of the table of formats, in the order a list shows them. */
export const formatNames = [
  'stroke-play-gross',
  'stroke-play-net',
  'stableford',
  'singles-match',
  'four-ball-match',
] as const

export type FormatName = (typeof formatNames)[number]
