/** What somebody usually goes round in. */
export const usualScores = ['70s', '80s', '90s', '100s'] as const
export type UsualScore = (typeof usualScores)[number]

/** Farther out than this the middle of the green is the target. Source: golf.com, by usual score; common practice. */
export const pinWithinYd: Readonly<Record<UsualScore, number>> = { '70s': 172, '80s': 120, '90s': 78, '100s': 50 }

export const pinOrMiddle = (score: UsualScore, distanceYd: number): 'pin' | 'middle' =>
  distanceYd <= pinWithinYd[score] ? 'pin' : 'middle'
