import type { HoleAdvice, KnownHole, NextAdvice, TeeAdvice } from '#core/plan/advice/hole-advice.ts'
import { wholeIn } from '#core/plan/advice/in-unit.ts'
import type { Misses, Trouble } from '#core/plan/advice/miss.ts'
import type { HoleWorth } from '#core/plan/advice/round-advice.ts'
import { middleOf, openHole, type Place } from '#core/plan/aim/sketch.ts'
import { verdictBorders } from '#core/plan/assumptions.ts'
import type { LengthUnit } from '#core/values/length.ts'
import { tenths } from './advice-text.ts'
import { formatList } from './figures.ts'
import { clubName } from './plan-text.ts'
import { say } from './say-any.ts'

/** Aims nearer than this to the middle or the line are at it: nobody aims finer. Our own. */
const finestAimYd = 3
const ten = 10

/** What a hole is worth: "Bogey is level here". */
export function worthText({ expected, levelToPar }: HoleWorth): string {
  const n = tenths(expected)
  if (levelToPar < 0) return say('numbers-worth-under', { n })
  if (levelToPar > 3) return say('numbers-worth-over', { n, over: levelToPar })
  return say(`numbers-worth-${levelToPar as 0 | 1 | 2 | 3}`, { n })
}

/** The tee shot, what is left, where to miss, and the trouble, in the player's unit. */
export function linesOfAdvice(advice: HoleAdvice, known: KnownHole, unit: LengthUnit): readonly string[] {
  const { tee, next, misses, troubles } = advice
  const middle = middleOf((known.sketch ?? openHole(known.lengthYd)).green)
  return [
    ...(tee === null ? [] : teeLines(tee, next, known.lengthYd, middle, unit)),
    ...nextLines(next, middle, unit),
    missLine(misses),
    ...troubleLine(troubles, unit),
  ]
}

function teeLines(tee: TeeAdvice, next: NextAdvice, lengthYd: number, middle: Place, unit: LengthUnit): string[] {
  const club = clubName(tee.club.club)
  const isAtGreen = next.kind === 'none' && tee.totalYd >= lengthYd
  const aim = isAtGreen ? aimAtGreen(tee.aim, middle, unit) : aimOnLine(tee.aim, unit)
  const penalties = Math.floor(ten * tee.penaltyShare + 0.5)
  const { driverAgainstLess } = tee
  return [
    say('numbers-tee', { club, aim }),
    ...(penalties > 0 ? [say('numbers-penalties', { n: penalties })] : []),
    ...(driverAgainstLess === null || isAtGreen
      ? []
      : [driverLine(driverAgainstLess.strokes, driverAgainstLess.verdict)]),
  ]
}

function driverLine(strokes: number, verdict: 'no-difference' | 'too-close' | 'slightly' | 'clearly'): string {
  const n = tenths(Math.abs(ten * strokes))
  if (verdict === 'no-difference' || verdict === 'too-close') return say(`numbers-driver-${verdict}`)
  return say(strokes < 0 ? 'numbers-driver-saves' : 'numbers-driver-costs', { n })
}

function aimOnLine({ rightYd }: Place, unit: LengthUnit): string {
  if (Math.abs(rightYd) < finestAimYd) return say('numbers-aim-line')
  return say(rightYd < 0 ? 'numbers-aim-left' : 'numbers-aim-right', { n: wholeIn(Math.abs(rightYd), unit) })
}

/** Across the green, and along it where that is away from its middle. */
function aimAtGreen(aim: Place, middle: Place, unit: LengthUnit): string {
  const [right, beyond] = [aim.rightYd - middle.rightYd, aim.beyondYd - middle.beyondYd]
  const parts = [
    Math.abs(right) >= finestAimYd &&
      say(right < 0 ? 'numbers-green-left' : 'numbers-green-right', { n: wholeIn(Math.abs(right), unit) }),
    Math.abs(beyond) >= finestAimYd &&
      say(beyond < 0 ? 'numbers-green-short' : 'numbers-green-long', { n: wholeIn(Math.abs(beyond), unit) }),
  ].filter(part => part !== false)
  return parts.length === 0 ? say('numbers-green-middle') : say('numbers-green-off', { off: formatList(parts) })
}

function nextLines(next: NextAdvice, middle: Place, unit: LengthUnit): string[] {
  switch (next.kind) {
    case 'none':
      return []
    case 'green': {
      const aim = aimAtGreen(next.aim.best.aim, middle, unit)
      return [say('numbers-next-green', { n: wholeIn(next.leavesYd, unit), club: clubName(next.club.club), aim })]
    }
    case 'lay-up': {
      const { best, favourite, favouriteCost } = next
      const n = wholeIn(next.leavesYd, unit)
      const shot = { club: clubName(best.club.club), leaves: wholeIn(best.leavesYd, unit) }
      return [
        say('numbers-next-lay-up', { n, ...shot }),
        ...(favourite === null || favouriteCost === null
          ? []
          : [favouriteLine(wholeIn(favourite.leavesYd, unit), favouriteCost)]),
      ]
    }
    case 'far':
      return [
        say('numbers-next-far', {
          n: wholeIn(next.leavesYd, unit),
          club: clubName(next.club.club),
          leaves: wholeIn(next.thenYd, unit),
        }),
      ]
  }
}

const favouriteLine = (n: number, cost: number): string =>
  cost < verdictBorders.slightly
    ? say('numbers-favourite-same', { n })
    : say('numbers-favourite-costs', { n, cost: tenths(ten * cost) })

function missLine({ differ, cheapest, dearest }: Misses): string {
  if (!differ) return say('numbers-miss-same')
  return say('numbers-miss', { cheapest: say(`miss-${cheapest}`), dearest: say(`miss-${dearest}`) })
}

/** Bunkers are told where nothing worse is drawn. */
function troubleLine(troubles: readonly Trouble[], unit: LengthUnit): string[] {
  const worse = troubles.filter(({ kind }) => kind !== 'bunker')
  const told = worse.length > 0 ? worse : troubles
  if (told.length === 0) return []
  const list = told.map(({ kind, side, fromTeeYd, toYd }) =>
    say('numbers-trouble-one', {
      kind: say(`trouble-${kind}`),
      side: say(`trouble-${side}`),
      from: wholeIn(fromTeeYd, unit),
      to: wholeIn(toYd, unit),
    }),
  )
  return [say('numbers-trouble', { list: list.join('; ') })]
}
