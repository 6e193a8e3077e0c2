import type { RatedGender } from '#core/handicap/slope.ts'
import { type Club, ladderThousandths } from '#core/plan/clubs.ts'
import type { Evidence } from '#core/plan/evidence.ts'

/** Average drives with roll, in yards, by Handicap Index up to `toIndex`. */
interface MeasuredDrives extends Evidence {
  readonly rows: readonly { readonly toIndex: number | null; readonly totalYd: number }[]
}

/** Source: R&A and USGA distance report, second-hand; a small sample of one country. */
export const measuredDrives: Readonly<Record<RatedGender, MeasuredDrives>> = {
  men: {
    confidence: 'second-hand',
    source: 'amateur-drives',
    rows: [
      { toIndex: 5, totalYd: 240 },
      { toIndex: 12, totalYd: 220 },
      { toIndex: 20, totalYd: 204 },
      { toIndex: null, totalYd: 187 },
    ],
  },
  women: {
    confidence: 'second-hand',
    source: 'amateur-drives',
    rows: [
      { toIndex: 5, totalYd: 196 },
      { toIndex: 12, totalYd: 178 },
      { toIndex: 20, totalYd: 153 },
      { toIndex: 28, totalYd: 138 },
      { toIndex: null, totalYd: 118 },
    ],
  },
}

/** A straight line through them. Source: derived from the same report. */
export const driveLines = {
  confidence: 'derived',
  source: 'worked-out',
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
