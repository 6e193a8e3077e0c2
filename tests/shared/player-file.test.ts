import { expect, test } from 'vitest'
import { bagOf } from '#core/plan/bag.ts'
import { measuredOf } from '#core/plan/spread/own-figures.ts'
import { playerFileOf } from '#shared/player-file.ts'
import { makePlan, saidOfAlder } from '#tests/kit/player-plan.ts'

test('a bag as a file has every club with what was said, what is used, and what was measured', () => {
  const measured = new Map([['iron-7' as const, measuredOf([140, 142])]])
  const parts = new Map([['sand-wedge' as const, new Map([['half' as const, 45]])]])
  const plan = makePlan({
    shots: new Map([
      [
        'iron-7',
        new Map([
          ['a', 140],
          ['b', 142],
        ]),
      ],
    ]),
    measured,
    parts,
    bag: bagOf(saidOfAlder, { unit: 'yards', measured, parts }),
  })
  const file = playerFileOf(plan)
  expect(file).toMatchObject({ sixThrees: 'player', version: 1, unit: 'yards', favourite: 100, strike: 'good-strike' })
  expect(file.clubs.map(({ club }) => club)).toEqual([...saidOfAlder.keys()])
  expect(file.clubs.find(({ club }) => club === 'iron-7')).toMatchObject({ carry: 145, measured: [140, 142] })
  expect(file.clubs.find(({ club }) => club === 'iron-8')).toMatchObject({ carry: null, isEstimated: true })
  expect(file.clubs.find(({ club }) => club === 'sand-wedge')?.partSwings).toEqual({ half: 45 })
  expect(JSON.parse(JSON.stringify(file))).toEqual(file)
})
