import type { RatedGender } from '#core/handicap/slope.ts'
import { type Club, ladderThousandths } from '#core/plan/clubs.ts'
import type { Evidence } from '#core/plan/evidence.ts'

/**
 * Average drives with roll as a straight line in the Index. Source: derived from the means of an R&A and USGA distance report,
 * second-hand; a small sample of one country.
 */
export const driveLines = {
  confidence: 'derived',
  source: 'amateur-drives',
  men: { atScratchYd: 245, perIndexYd: 2.35 },
  women: { atScratchYd: 201, perIndexYd: 2.45 },
  mostIndex: 36,
} as const satisfies Evidence & Record<string, unknown>

export function usualDriveYd(handicapIndex: number, gender: RatedGender): number {
  const { atScratchYd, perIndexYd } = driveLines[gender]
  return atScratchYd - perIndexYd * Math.min(handicapIndex, driveLines.mostIndex)
}

/** How far a ball runs on flat ground after it lands; that of the driver is what the rating system takes. */
export const rollYd = {
  confidence: 'own',
  source: 'ours',
  driver: 20,
  wood: 16,
  hybrid: 12,
  iron: 8,
} as const satisfies Evidence & Record<string, unknown>

/** The carry of a club nobody has put a number to, from the Index alone. Source: our own ladder under a usual drive. */
export const usualCarryYd = (club: Club, handicapIndex: number, gender: RatedGender): number =>
  ((usualDriveYd(handicapIndex, gender) - rollYd.driver) * ladderThousandths[club]) / 1000
