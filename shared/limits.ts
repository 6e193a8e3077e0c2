/** What both ends hold to. Sizes are characters of JSON text unless they say otherwise. */
export const limits = {
  nameLength: 40,
  titleLength: 80,
  actLength: 40,
  reasonLength: 200,
  /** Of one op: an import of 144 names in one act fits ten times. */
  opLength: 100_000,
  opDepth: 8,
  factsInOp: 2_000,
  replacesInFact: 200,
  keyLength: 160,
  /** Of one push: a phone splits what waits into frames of about this size. */
  opsInPush: 200,
  pushLength: 32_000,
  /** A server takes no larger frame or body. */
  frameBytes: 1_000_000,
  opsInAnswer: 2_000,
  feedsInFollow: 20,
  strokesOnHole: 30,
  handicapStrokes: 99,
  devicesInExchange: 5_000,
  rangesInDevice: 10_000,
  playersInOuting: 400,
} as const
