import {
  driverFigures,
  favouriteFigures,
  type HabitFigures,
  middleFigures,
  pinDepthFigures,
} from '#core/plan/advice/habit-figures.ts'
import { toYards } from '#core/plan/advice/in-unit.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { Ways } from '../../words/advice-text.ts'
import { say } from '../../words/say-any.ts'

/** A habit held against another way. */
export interface HabitQuestion {
  readonly title: string
  /** Where it is asked. */
  readonly at: string
  readonly ways: Ways
  /** What the tables do not know of it. */
  readonly caution: string | null
  /** What is said where there is no answer. */
  readonly none: string
  readonly work: (golfer: Golfer) => HabitFigures | null
}

/** An open par 4, in the player's unit, off whose tee the driver is asked about. Our own. */
const par4Length = { yards: 380, metres: 350 } as const

/** So far inside the border of the mid-irons, and no nearer than this, a pin's depth is asked about. Our own. */
const insideBorder = 30
const nearest = 60

export const habitQuestions = (plan: Plan): readonly HabitQuestion[] => [
  middleQuestion(plan),
  depthQuestion(plan, 'front'),
  depthQuestion(plan, 'back'),
  favouriteQuestion(plan),
  driverQuestion(plan),
]

const noClub = (): string => say('figures-few-clubs')

function middleQuestion({ numbers, unit }: Plan): HabitQuestion {
  const n = numbers['mid-iron-border']
  return {
    title: say('figures-middle'),
    at: say('figures-middle-at', { n, unit: say(`unit-${unit}`) }),
    ways: { habit: say('figures-middle-habit'), other: say('figures-middle-other') },
    caution: null,
    none: noClub(),
    work: golfer => middleFigures(golfer, toYards(n, unit)),
  }
}

function depthQuestion({ numbers, unit }: Plan, depth: 'front' | 'back'): HabitQuestion {
  const n = Math.max(nearest, numbers['mid-iron-border'] - insideBorder)
  const by = numbers[depth === 'front' ? 'past-front-pin' : 'short-of-back-pin']
  return {
    title: say(`figures-${depth}`),
    at: say(`figures-${depth}-at`, { n, by, unit: say(`unit-${unit}`) }),
    ways: { habit: say(`figures-${depth}-habit`, { by }), other: say('figures-pin-other') },
    caution: null,
    none: noClub(),
    work: golfer => pinDepthFigures(golfer, toYards(n, unit), depth, toYards(by, unit)),
  }
}

function favouriteQuestion({ favourite, unit }: Plan): HabitQuestion {
  const n = favourite ?? 0
  return {
    title: say('figures-favourite'),
    at: favourite === null ? '' : say('figures-favourite-at', { n }),
    ways: { habit: say('figures-favourite-habit', { n }), other: say('figures-favourite-other') },
    caution: say('figures-favourite-why'),
    none: favourite === null ? say('figures-favourite-none') : noClub(),
    work: golfer => (favourite === null ? null : favouriteFigures(golfer, toYards(favourite, unit))),
  }
}

function driverQuestion({ unit }: Plan): HabitQuestion {
  const n = par4Length[unit]
  return {
    title: say('figures-driver'),
    at: say('figures-driver-at', { n, unit: say(`unit-${unit}`) }),
    ways: { habit: say('figures-driver-habit'), other: say('figures-driver-other') },
    caution: say('figures-driver-why'),
    none: say('figures-driver-none'),
    work: golfer => driverFigures(golfer, toYards(n, unit)),
  }
}
