import { describe, expect, it } from 'vitest'
import { formatMinuteOfDay, parseMinuteOfDay, teeTimes } from '#core/outing/draw/tee-times.ts'

describe('tee times (Committee Procedures 4A(1), 2019 and 2023)', () => {
  it('follow at the interval', () => {
    const times = teeTimes({ firstMinute: 540, intervalMinutes: 8, groups: 3, gapAfterGroups: null })
    expect(times.map(formatMinuteOfDay)).toEqual(['09:00', '09:08', '09:16'])
  })

  it('leave one empty after every so many groups', () => {
    const times = teeTimes({ firstMinute: 540, intervalMinutes: 10, groups: 5, gapAfterGroups: 2 })
    expect(times).toEqual([540, 550, 570, 580, 600])
  })

  it('read and write 24 hours', () => {
    expect(['00:00', '09:05', '23:59'].map(parseMinuteOfDay)).toEqual([0, 545, 1439])
    expect(['24:00', '9:05', '12:60', ''].map(parseMinuteOfDay)).toEqual([null, null, null, null])
    expect([0, 545, 1439, 1445].map(formatMinuteOfDay)).toEqual(['00:00', '09:05', '23:59', '00:05'])
  })
})
