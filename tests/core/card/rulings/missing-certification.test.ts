import { expect, it } from 'vitest'
import { ruleOnMissingCertification } from '#core/card/rulings/missing-certification.ts'

it('a card not certified disqualifies (Rules of Golf 3.3b(2)), or costs two strokes under Model Local Rule L-1', () => {
  expect(ruleOnMissingCertification(false)).toEqual({ code: 'disqualified' })
  expect(ruleOnMissingCertification(true)).toEqual({ code: 'penalty-strokes', strokes: 2 })
})
