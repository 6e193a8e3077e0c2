import { describe, expect, it } from 'vitest'
import {
  driverFigures,
  favouriteFigures,
  type HabitFigures,
  middleFigures,
  pinDepthFigures,
} from '#core/plan/advice/habit-figures.ts'
import { holeAdvice, type KnownHole } from '#core/plan/advice/hole-advice.ts'
import { toYards, wholeIn } from '#core/plan/advice/in-unit.ts'
import { roundAdvice } from '#core/plan/advice/round-advice.ts'
import { type BallInHand, shotAdvice } from '#core/plan/advice/shot-advice.ts'
import { waterRight } from '../../../kit/aim-case.ts'
import { along, fairwayOf, holeWith } from '../../../kit/plan-holes.ts'
import { usualGolfer } from '../../../kit/usual-golfer.ts'

const men = (index: number) => usualGolfer(index, 'men')
const hole = (lengthYd: number, par: number, sketch: KnownHole['sketch'] = null): KnownHole => ({
  hole: 1,
  par,
  lengthYd,
  sketch,
})

const ball = (change: Partial<BallInHand> = {}): BallInHand => ({
  golfer: men(18),
  distanceYd: 130,
  pinDepth: 'middle',
  pinSide: 'right',
  lie: 'fairway',
  sketch: holeWith(),
  dayPercent: 0,
  riseYd: 0,
  gap: null,
  favouriteYd: 100,
  ...change,
})

describe('the plan of a hole', () => {
  it('has a tee club, the number it leaves, and the green from there', () => {
    const { tee, next } = holeAdvice(men(10), hole(340, 4), 100)
    expect(tee?.club.club).toBe('driver')
    expect(next).toMatchObject({ kind: 'green' })
    if (next.kind === 'green') expect(next.leavesYd).toBeCloseTo(340 - (tee?.totalYd ?? 0), 9)
  })

  it('lays up where no club reaches, and says what the favourite number costs', () => {
    const { next } = holeAdvice(men(18), hole(420, 4), 100)
    expect(next.kind).toBe('lay-up')
    if (next.kind !== 'lay-up') return
    expect(next.favourite?.leavesYd).toBe(100)
    expect(next.favouriteCost).toBeGreaterThan(0)
    expect(next.best.leavesYd).toBeLessThan(100)
  })

  it('goes as far as it can on a hole of three full shots', () => {
    const { next } = holeAdvice(men(28), hole(540, 5), 100)
    expect(next).toMatchObject({ kind: 'far', club: { club: 'wood-3' } })
  })

  it('is one shot on a par 3 in reach, with no question about the driver', () => {
    const { tee, next } = holeAdvice(men(10), hole(150, 3), 100)
    expect(tee?.driverAgainstLess).toBeNull()
    expect(tee?.totalYd).toBe(150)
    expect(next.kind).toBe('none')
  })

  it('says nothing of clubs to an empty bag', () => {
    expect(holeAdvice({ ...men(10), clubs: [] }, hole(400, 4), 100)).toMatchObject({
      tee: null,
      next: { kind: 'none' },
    })
  })

  it('knows where a miss is cheap and where trouble lies', () => {
    const sketch = holeWith(fairwayOf(32), waterRight, along('out-of-bounds', -60))
    const { misses, troubles } = holeAdvice(men(18), hole(380, 4, sketch), 100)
    expect(misses.dearest).toBe('right')
    expect(misses.differ).toBe(true)
    expect(misses.costs[misses.cheapest]).toBe(0)
    expect(troubles.map(({ kind, side }) => [kind, side])).toEqual([
      ['water', 'right'],
      ['out-of-bounds', 'left'],
    ])
    expect(troubles[0]).toMatchObject({ fromTeeYd: 355, toYd: 405 })
  })
})

describe('the plan of a round', () => {
  const holes = [380, 165, 520, 400].map((lengthYd, at) => ({ ...hole(lengthYd, [4, 3, 5, 4][at] ?? 4), hole: at + 1 }))

  it('says what each hole is worth: bogey is level for an Index of 18 (USGA length formulas, second-hand)', () => {
    const planned = roundAdvice(men(18), holes, null, 100)
    expect(planned.map(({ hole: number }) => number)).toEqual([1, 2, 3, 4])
    expect(planned.map(({ worth }) => worth.levelToPar)).toEqual([1, 1, 1, 1])
    const scratch = roundAdvice(men(0), holes, null, 100)
    expect(scratch.every(({ worth }) => worth.levelToPar === 0)).toBe(true)
  })
})

describe('the ball in hand', () => {
  it('is aimed at the middle with a pin at the side, and away from water beside it', () => {
    const dry = shotAdvice(ball({ golfer: men(10) }))
    const wet = shotAdvice(ball({ golfer: men(10), sketch: holeWith(waterRight) }))
    if (dry.kind !== 'green' || wet.kind !== 'green') throw new Error('both are in reach')
    expect(wet.aim.best.aim.rightYd).toBeLessThan(dry.aim.best.aim.rightYd)
    expect(['middle', 'away-from-trouble']).toContain(wet.reason)
    expect(wet.aim.flagCost).toBeGreaterThan(dry.aim.flagCost)
    expect(wet.picture.strokes).toHaveLength(10)
  })

  it('says that the flag costs nothing where it stands in the middle', () => {
    expect(shotAdvice(ball({ pinSide: 'middle' }))).toMatchObject({ kind: 'green', reason: 'flag-costs-nothing' })
  })

  it('plays longer uphill and on a day that plays longer, with the range of the rules', () => {
    const flat = shotAdvice(ball())
    const up = shotAdvice(ball({ dayPercent: 4, riseYd: 5 }))
    expect(flat.plays).toEqual({ yd: 130, leastYd: 130, mostYd: 130 })
    expect(up.plays.yd).toBeGreaterThan(135)
    expect(up.plays.leastYd).toBeLessThanOrEqual(up.plays.yd)
    if (flat.kind !== 'green' || up.kind !== 'green') throw new Error('both are in reach')
    expect(up.club.carryYd).toBeGreaterThanOrEqual(up.targetYd)
  })

  it('lays up where what it plays is out of reach, though the distance is not', () => {
    const golfer = men(18)
    const longest = Math.max(...golfer.clubs.filter(({ club }) => club !== 'driver').map(({ carryYd }) => carryYd))
    expect(shotAdvice(ball({ golfer, distanceYd: longest })).kind).toBe('green')
    expect(shotAdvice(ball({ golfer, distanceYd: longest, dayPercent: 8 }))).toMatchObject({
      kind: 'lay-up',
      next: { kind: 'far' },
    })
    expect(shotAdvice(ball({ golfer, distanceYd: 230 }))).toMatchObject({ kind: 'lay-up', next: { kind: 'lay-up' } })
  })

  it('comes out of the trees first, unless the gap is wide', () => {
    const out = shotAdvice(ball({ lie: 'recovery', gap: { leftDeg: 1, rightDeg: 1 } }))
    const wide = shotAdvice(ball({ lie: 'recovery', gap: { leftDeg: 12, rightDeg: 12 } }))
    expect(out).toMatchObject({ kind: 'recovery', gap: { advice: 'out' } })
    expect(wide).toMatchObject({ kind: 'recovery', gap: { advice: 'gap' } })
    expect(shotAdvice(ball({ lie: 'recovery' }))).toMatchObject({ kind: 'recovery', gap: null })
  })
})

describe('what the numbers say of the habits', () => {
  const inRange = ({ perTenShots, least, most }: HabitFigures) =>
    perTenShots >= least - 1e-9 && perTenShots <= most + 1e-9

  it.each([0, 10, 18, 28])('in strokes for ten shots with a range: Index %s', index => {
    const golfer = men(index)
    const all = [
      middleFigures(golfer, 140),
      pinDepthFigures(golfer, 100, 'front', 5),
      pinDepthFigures(golfer, 100, 'back', 5),
      favouriteFigures(golfer, 100),
      driverFigures(golfer, 400),
    ]
    for (const figures of all) {
      if (figures === null) throw new Error('all are in reach')
      expect(inRange(figures)).toBe(true)
      if (Math.abs(figures.perTenShots) < 0.5) expect(figures.verdict).toBe('no-difference')
      if (figures.verdict === 'clearly') expect(Math.abs(figures.perTenShots)).toBeGreaterThan(1)
    }
  })

  it('closer is better than a favourite of 100 on clear ground, and the driver than less on the open hole (derived)', () => {
    expect(favouriteFigures(men(18), 100)).toMatchObject({ habitIsBetter: false, verdict: 'clearly' })
    expect(driverFigures(men(18), 400)).toMatchObject({ habitIsBetter: true, verdict: 'clearly' })
  })

  it('says where the answer rests on what a short side costs, which nobody publishes', () => {
    expect(middleFigures(men(10), 140)).toMatchObject({ restsOn: 'short-side' })
  })

  it('is silent where no club reaches', () => {
    expect(middleFigures(men(28), 200)).toBeNull()
    expect(driverFigures({ ...men(18), clubs: men(18).clubs.slice(0, 1) }, 400)).toBeNull()
  })
})

describe('the player’s unit', () => {
  it('is left and entered at the border of the engine', () => {
    expect(toYards(100, 'metres')).toBeCloseTo(109.361, 3)
    expect(wholeIn(109.361, 'metres')).toBe(100)
    expect(wholeIn(99.5, 'yards')).toBe(100)
  })
})
