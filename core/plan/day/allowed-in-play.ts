/** What a phone could show during a round that is played under the Rules. */
export const playAids = [
  'straight-distance',
  'distance-adjusted-for-height',
  'club-from-ball-position',
  'club-chart-made-before',
  'forecast-wind',
  'wind-measured-on-course',
  'temperature-measured-on-course',
  'putts-recorded-for-later',
  'club-from-todays-distances',
  'match-score',
  'note-made-before',
] as const
export type PlayAid = (typeof playAids)[number]

const barred: readonly PlayAid[] = [
  'distance-adjusted-for-height',
  'club-from-ball-position',
  'wind-measured-on-course',
  'club-from-todays-distances',
]

/**
 * Whether it may be shown. Source: Rules of Golf 2023, rule 4.3a; Model Local Rule G-5 bars devices that measure distance.
 */
export const isAllowedInPlay = (aid: PlayAid, isLocalRuleG5On: boolean): boolean =>
  !barred.includes(aid) && !(isLocalRuleG5On && aid === 'straight-distance')
