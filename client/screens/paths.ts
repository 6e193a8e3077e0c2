import type { PlayedHole } from '#core/card/score.ts'
import type { LogId } from '#core/values/ids.ts'

export const outingTabs = ['hole', 'board', 'card', 'share'] as const
export type OutingTab = (typeof outingTabs)[number]

/** Paths behind the `#` of the address. */
export const paths = {
  home: '/',
  start: '/start',
  join: '/join',
  bag: '/bag',
  own: '/own',
} as const

export const tabPath = (log: LogId, tab: OutingTab): string => `/o/${log}/${tab}`

export const gamesPath = (log: LogId): string => `/o/${log}/games`

export const groupsPath = (log: LogId): string => `/o/${log}/groups`

export const mendPath = (log: LogId): string => `/o/${log}/mend`

export const rulingsPath = (log: LogId): string => `/o/${log}/rulings`

/** Lap 1 goes without saying. */
export const holePath = (log: LogId, { hole, lap }: PlayedHole): string =>
  lap === 1 ? `/o/${log}/hole/${hole}` : `/o/${log}/hole/${hole}/${lap}`

/** The reset after a three, by its number from 1. */
export const resetPath = (log: LogId, three: number): string => `/o/${log}/reset/${three}`

/** After the last hole: how it came out, and the way to the card. */
export const finishPath = (log: LogId): string => `/o/${log}/finish`

/** The player's own targets and cue. */
export const aimsPath = (log: LogId): string => `/o/${log}/targets`

/** The player's own plan for a hole. */
export const planPath = (log: LogId, { hole, lap }: PlayedHole): string => `/o/${log}/plan/${hole}/${lap}`

/** The sketch of a hole, the course's. */
export const sketchPath = (log: LogId, hole: number): string => `/o/${log}/sketch/${hole}`

/** The player's bag, opened from an outing. */
export const bagPath = (log: LogId, { hole, lap }: PlayedHole): string => `/o/${log}/bag/${hole}/${lap}`
