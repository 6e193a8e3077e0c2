/** What becomes of the skin of a tied hole. */
export const skinsMethods = ['carry-over', 'no-carry-over'] as const
export type SkinsMethod = (typeof skinsMethods)[number]

/** What becomes of skins that wait after the last hole: nobody has them, all share them alike, or extra holes are played. */
export const skinsLeftMethods = ['unclaimed', 'shared-out', 'play-on'] as const
export type SkinsLeftMethod = (typeof skinsLeftMethods)[number]
