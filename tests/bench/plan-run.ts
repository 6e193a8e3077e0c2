import { performance } from 'node:perf_hooks'
import type { KnownHole } from '#core/plan/advice/hole-advice.ts'
import { roundAdvice } from '#core/plan/advice/round-advice.ts'
import { type ShotAdvice, shotAdvice } from '#core/plan/advice/shot-advice.ts'
import type { HoleSketch, Shape } from '#core/plan/aim/sketch.ts'
import { quillmoor } from '../kit/quillmoor.ts'
import { usualGolfer } from '../kit/usual-golfer.ts'
import { type BenchResult, quantile, rounded } from './figures.ts'

const golfer = usualGolfer(18, 'men')
const rounds = 9

/** A hole drawn in full: six shapes. */
function sketchOf(lengthYd: number): HoleSketch {
  const box = (
    kind: Shape['kind'],
    rightYd: number,
    beyondYd: number,
    halfWidthYd: number,
    halfDepthYd: number,
  ): Shape => ({
    kind,
    form: 'box',
    rightYd,
    beyondYd,
    halfWidthYd,
    halfDepthYd,
  })
  const oval = (kind: Shape['kind'], rightYd: number, beyondYd: number): Shape => ({
    ...box(kind, rightYd, beyondYd, 8, 12),
    form: 'oval',
  })
  const shapes = [
    box('fairway', 0, -lengthYd / 2 - 10, 16, lengthYd / 2 - 30),
    box('out-of-bounds', 140, -lengthYd / 2, 100, lengthYd),
    box('trees', -70, -lengthYd / 2, 30, lengthYd / 2),
    box('water', 0, -60, 25, 10),
    oval('bunker', 20, 0),
    oval('bunker', -20, -5),
  ]
  return { green: { widthYd: 26, depthYd: 28, rightYd: 0 }, shapes }
}

const holes: readonly KnownHole[] = quillmoor.yards.map((lengthYd, at) => ({
  hole: at + 1,
  par: quillmoor.pars[at] ?? 4,
  lengthYd,
  sketch: sketchOf(lengthYd),
}))

/** What a machine does in the same time: a fixed number of roots and exponentials over an array. */
export function calibration(): number {
  const values = new Float64Array(4096)
  let sum = 0
  for (let pass = 0; pass < 200; pass++) {
    for (let at = 0; at < values.length; at++) {
      const next = Math.exp(-Math.sqrt(at + pass)) + (values[at] as number) * 0.5
      values[at] = next
      sum += next
    }
  }
  return sum
}

const note = (): ShotAdvice =>
  shotAdvice({
    golfer,
    distanceYd: 138,
    pinDepth: 'back',
    pinSide: 'right',
    lie: 'fairway',
    sketch: sketchOf(380),
    dayPercent: 2,
    riseYd: 1,
    gap: null,
    favouriteYd: 100,
  })

function timed(run: () => unknown): number {
  const from = performance.now()
  run()
  return performance.now() - from
}

/** The very first answer of a page, before anything is warm, and the calibration loop after it; in milliseconds. */
export const firstAnswer = () => ({ note: timed(note), calibration: timed(calibration) })

/** Run as built: see tests/kit/as-built.ts. `firsts` are first answers of processes of their own. */
export function runPlan(firsts: readonly { note: number; calibration: number }[]): BenchResult {
  const [calibrations, eighteens]: [number[], number[]] = [[], []]
  for (let round = 0; round < rounds; round++) {
    calibrations.push(timed(calibration))
    eighteens.push(timed(() => roundAdvice(golfer, holes, null, 100)))
  }
  const median = (all: readonly number[]): number => quantile(all, 0.5)
  const [loop, eighteen] = [median(calibrations), median(eighteens)]
  const first = { note: median(firsts.map(each => each.note)), loop: median(firsts.map(each => each.calibration)) }
  const ratio = { eighteenHoles: rounded(eighteen / loop), firstAnswer: rounded(first.note / first.loop) }
  return {
    name: 'plan',
    ours: { eighteenHoles: rounded(eighteen), firstAnswer: rounded(first.note) },
    yardstick: { eighteenHoles: rounded(loop), firstAnswer: rounded(first.loop) },
    ratio,
    budget,
    holds: ratio.eighteenHoles <= budget.eighteenHoles && ratio.firstAnswer <= budget.firstAnswer,
  }
}

const budget = { eighteenHoles: 50, firstAnswer: 8 }
