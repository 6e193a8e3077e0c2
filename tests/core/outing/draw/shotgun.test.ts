import { describe, expect, it } from 'vitest'
import { shotgunPlaces } from '#core/outing/draw/shotgun.ts'
import { err, ok } from '#core/values/result.ts'

describe('shotgun start (instructions of a seniors’ association, 2016, second-hand)', () => {
  it('puts one group at each hole first', () => {
    expect(shotgunPlaces(2, [])).toEqual(
      ok([
        { hole: 1, letter: 'A' },
        { hole: 2, letter: 'A' },
      ]),
    )
  })

  it('then doubles up at the holes and in the order the organiser names', () => {
    const places = shotgunPlaces(20, [5, 14, 2])
    expect(places.ok && places.value.slice(17)).toEqual([
      { hole: 18, letter: 'A' },
      { hole: 5, letter: 'B' },
      { hole: 14, letter: 'B' },
    ])
  })

  it('says when the holes named do not suffice', () => {
    expect(shotgunPlaces(20, [5])).toEqual(err('too-few-holes'))
  })
})
