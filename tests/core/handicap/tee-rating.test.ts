import { describe, expect, it } from 'vitest'
import { teeParForms } from '#core/handicap/tee-par.ts'
import { teeRatingTenths } from '#core/handicap/tee-rating.ts'

// Great Britain and Ireland, November 2020 to March 2024: by Course Rating, second-hand; the figures from memory.
describe('what a tee is harder by where no Course Handicap holds rating minus par', () => {
  it.each(teeParForms)('%s', form => {
    const isAgainstPar = form === 'stableford' || form === 'par-bogey'
    expect(teeRatingTenths(form, { courseRatingTenths: 724, slope: 131, par: 73 })).toBe(isAgainstPar ? -6 : 724)
  })
})
