import type { RatedGender } from '#core/handicap/slope.ts'

export const lengthUnits = ['yards', 'metres'] as const
export type LengthUnit = (typeof lengthUnits)[number]

/** Both ends belong to the range; `null` has no end. */
interface ParLength {
  readonly par: number
  readonly from: number | null
  readonly to: number | null
}

const parLength = (par: number, from: number | null, to: number | null): ParLength => ({ par, from, to })

/** The table prints its metres rounded, so a length is held against the column of its own unit. */
const parLengths: Record<RatedGender, Record<LengthUnit, readonly ParLength[]>> = {
  men: {
    yards: [parLength(3, null, 260), parLength(4, 240, 490), parLength(5, 450, 710), parLength(6, 670, null)],
    metres: [parLength(3, null, 240), parLength(4, 220, 450), parLength(5, 410, 650), parLength(6, 610, null)],
  },
  women: {
    yards: [parLength(3, null, 220), parLength(4, 200, 420), parLength(5, 370, 600), parLength(6, 570, null)],
    metres: [parLength(3, null, 200), parLength(4, 180, 380), parLength(5, 340, 550), parLength(6, 520, null)],
  },
}

/**
 * The pars that a hole of this length can have, ascending; where there are two, its difficulty decides.
 * Source: Rules of Handicapping, Appendix F; below 610 m of altitude; 2020 and 2024.
 */
export const parCandidates = (length: number, unit: LengthUnit, gender: RatedGender): number[] =>
  parLengths[gender][unit]
    .filter(({ from, to }) => (from === null || length >= from) && (to === null || length <= to))
    .map(({ par }) => par)
