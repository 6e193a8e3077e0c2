import { describe, expect, it } from 'vitest'
import {
  goodStrikeYd,
  measuredOf,
  ownCarry,
  ownHoledShare,
  ownMishitShare,
  ownPenaltyShare,
  ownSd,
  ownSideBiasYd,
  ownSkill,
} from '#core/plan/spread/own-figures.ts'

const shotsAt = (value: number, shots: number) => ({ shots, mean: value, squares: 0 })

/** How soon own shots outweigh a default is our own choice; the rules that weigh them are standard ones of Bayes. */
describe('own figures', () => {
  it('are the default without a shot', () => {
    const none = measuredOf([])
    expect(ownCarry(150, none, 12)).toBe(150)
    expect(ownSd(12, none)).toBe(12)
    expect(ownSideBiasYd(none, 12)).toBe(0)
    expect(ownMishitShare(0.05, 0, 0)).toBeCloseTo(0.05, 12)
  })

  it('a carry counts half after two or three shots (own)', () => {
    // The default is sure to 6 percent of 150, 9 yards; a shot to 13.4: (13.4 / 9) squared is 2.2 shots.
    expect(ownCarry(150, shotsAt(160, 2), 13.4)).toBeLessThan(155)
    expect(ownCarry(150, shotsAt(160, 3), 13.4)).toBeGreaterThan(155)
    expect(ownCarry(150, shotsAt(160, 500), 13.4)).toBeCloseTo(160, 0)
  })

  it('a side counts half after eight shots (own)', () => {
    expect(ownSideBiasYd(shotsAt(6, 8), 10)).toBeCloseTo(3, 1)
    expect(ownSideBiasYd(shotsAt(-6, 8), 10)).toBeCloseTo(-3, 1)
  })

  it('a spread moves to the measured one, and no single shot moves it', () => {
    expect(ownSd(12, shotsAt(0, 1))).toBe(12)
    const wide = { shots: 41, mean: 0, squares: 40 * 18 ** 2 }
    // (10 x 144 + 40 x 324) / 50 = 288.
    expect(ownSd(12, wide)).toBeCloseTo(Math.sqrt(288), 9)
  })

  it('counts shares with the default as so many tries (own)', () => {
    expect(ownMishitShare(0.05, 4, 20)).toBeCloseTo((1 + 4) / 40, 12)
    expect(ownPenaltyShare(0.1, 0, 28)).toBeCloseTo(0.05, 12)
    expect(ownHoledShare(0.4, 30, 30)).toBeCloseTo(0.7, 12)
  })

  it('a part of the game stands nearer to what was measured of it, the more rounds there are (own)', () => {
    // Sure to 0.25; four rounds that vary by 0.5 weigh as much.
    expect(ownSkill(0.8, shotsAt(1.2, 4), 0.5)).toBeCloseTo(1, 9)
    expect(ownSkill(0.8, measuredOf([]), 0.5)).toBe(0.8)
  })

  it('measures mean and squares', () => {
    expect(measuredOf([140, 150, 160])).toEqual({ shots: 3, mean: 150, squares: 200 })
  })

  it('takes the mishits out of an average carry: good strikes go farther', () => {
    expect(goodStrikeYd(150, 0)).toBe(150)
    // A share of 0.06 that goes 0.55 as far takes 2.7 percent off.
    expect(goodStrikeYd(0.973 * 150, 0.06)).toBeCloseTo(150, 9)
  })
})
