/**
 * Days since 1 March of the year 0 in the calendar of today, from `YYYY-MM-DD`; `null` when no such day exists. Days are
 * whole numbers, so the 365 days before one are a subtraction.
 */
export function parseCalendarDay(text: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)
  if (!match) return null
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number]
  if (month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return null
  // A year that begins in March has its leap day at the end, where it moves no other day.
  const marchYear = month > 2 ? year : year - 1
  const marchMonth = (month + 9) % 12
  return 365 * marchYear + leapDays(marchYear) + Math.floor((153 * marchMonth + 2) / 5) + day - 1
}

const leapDays = (year: number): number => Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400)

function daysIn(year: number, month: number): number {
  if (month === 2) return leapDays(year) > leapDays(year - 1) ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}
