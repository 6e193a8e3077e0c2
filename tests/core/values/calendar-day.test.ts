import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { must } from '#core/values/assert.ts'
import { parseCalendarDay } from '#core/values/calendar-day.ts'

const msPerDay = 86_400_000
const dayOf = (text: string): number => must(parseCalendarDay(text), text)

describe('calendar days', () => {
  it('lie as far apart as the calendar says', () => {
    const anyDay = fc.date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true })
    fc.assert(
      fc.property(anyDay, anyDay, (first, second) => {
        const [one, other] = [first, second].map(each => each.toISOString().slice(0, 10)) as [string, string]
        expect(dayOf(one) - dayOf(other)).toBe((Date.parse(one) - Date.parse(other)) / msPerDay)
      }),
    )
  })

  it('are 365 or 366 to a year', () => {
    expect(dayOf('2025-12-01') - dayOf('2024-12-01')).toBe(365)
    expect(dayOf('2024-12-01') - dayOf('2023-12-01')).toBe(366)
  })

  it.each(['2024-02-29', '2000-02-29', '2023-12-31'])('include %s', text => {
    expect(parseCalendarDay(text)).not.toBeNull()
  })

  it.each(['2023-02-29', '1900-02-29', '2024-04-31', '2024-13-01', '2024-00-10', '2024-01-00', '2024-1-1', ''])(
    'do not include %j',
    text => {
      expect(parseCalendarDay(text)).toBeNull()
    },
  )
})
