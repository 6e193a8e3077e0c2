/** Tee times of so many groups one after the other. */
export interface TeeTimes {
  /** Minutes after midnight. */
  readonly firstMinute: number
  readonly intervalMinutes: number
  readonly groups: number
  /** One time stays empty after every so many groups, for the starter to catch up; `null` for none. */
  readonly gapAfterGroups: number | null
}

/**
 * The tee time of each group, in minutes after midnight; beyond a day it goes on counting.
 * Source: Committee Procedures 4A(1); R&A and USGA; 2019 and 2023.
 */
export const teeTimes = ({ firstMinute, intervalMinutes, groups, gapAfterGroups }: TeeTimes): number[] =>
  Array.from({ length: groups }, (_, at) => {
    const gaps = gapAfterGroups === null ? 0 : Math.floor(at / gapAfterGroups)
    return firstMinute + (at + gaps) * intervalMinutes
  })

const minutesOfDay = 24 * 60

/** `HH:MM`, 24 hours. */
export function formatMinuteOfDay(minute: number): string {
  const ofDay = ((minute % minutesOfDay) + minutesOfDay) % minutesOfDay
  return [Math.floor(ofDay / 60), ofDay % 60].map(part => String(part).padStart(2, '0')).join(':')
}

/** Minutes after midnight from `HH:MM`; `null` when there is no such time. */
export function parseMinuteOfDay(text: string): number | null {
  const match = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(text)
  return match ? 60 * Number(match[1]) + Number(match[2]) : null
}
