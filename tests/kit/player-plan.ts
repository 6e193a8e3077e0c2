import * as fc from 'fast-check'
import { bagOf } from '#core/plan/bag.ts'
import { type Club, clubs } from '#core/plan/clubs.ts'
import type { Plan } from '#core/plan/plan.ts'

/** Carries in yards of a bag made up for tests; five of them said, three to be estimated. */
export const saidOfAlder: ReadonlyMap<Club, number | null> = new Map<Club, number | null>([
  ['driver', 215],
  ['wood-3', 195],
  ['iron-5', null],
  ['iron-6', null],
  ['iron-7', 145],
  ['iron-8', null],
  ['pitching-wedge', 112],
  ['sand-wedge', 85],
])

/** A plan in yards with every habit on and the numbers of the check values. */
export function makePlan(change: Partial<Plan> = {}): Plan {
  const said = change.said ?? saidOfAlder
  return {
    unit: 'yards',
    said,
    shots: new Map(),
    spreads: new Map(),
    parts: new Map(),
    measured: new Map(),
    strike: 'good-strike',
    bag: bagOf(said),
    indexTenths: null,
    ratings: null,
    favourite: 100,
    habits: { middle: true, 'pin-depth': true, 'lay-up': true, trees: true, 'six-threes': true },
    rulesRounds: [],
    numbers: { 'mid-iron-border': 140, 'past-front-pin': 5, 'short-of-back-pin': 5 },
    ...change,
  }
}

/** Any bag that a person may type in, sensible or not: some clubs with a number, some without. */
export const anySaid: fc.Arbitrary<ReadonlyMap<Club, number | null>> = fc
  .array(fc.tuple(fc.constantFrom(...clubs), fc.option(fc.integer({ min: 30, max: 330 }), { freq: 3 })), {
    maxLength: 16,
  })
  .map(pairs => new Map(pairs))

/** Any plan with the habits on. */
export const anyPlan: fc.Arbitrary<Plan> = fc
  .record({
    said: anySaid,
    favourite: fc.option(fc.integer({ min: 30, max: 200 })),
    border: fc.integer({ min: 60, max: 220 }),
    past: fc.integer({ min: 0, max: 20 }),
    short: fc.integer({ min: 0, max: 20 }),
  })
  .map(({ said, favourite, border, past, short }) =>
    makePlan({
      said,
      bag: bagOf(said),
      favourite,
      numbers: { 'mid-iron-border': border, 'past-front-pin': past, 'short-of-back-pin': short },
    }),
  )
