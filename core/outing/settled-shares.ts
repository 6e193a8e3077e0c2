import type { ShareLine } from '#core/formats/shares.ts'
import type { SharesResult } from '#core/formats/shares-result.ts'
import { formatDecimal } from '#core/values/decimal.ts'
import type { Outing } from './outing.ts'
import type { SettledShareLine, SettledShares } from './settle-output-parts.ts'
import { namesOf, settledHole, sideHole } from './settled-side.ts'

export const settledShares = (outing: Outing, result: SharesResult): SettledShares => ({
  unit: result.unit,
  holes: result.holes.map(({ key, kind, values, shares, pot }) => ({
    ...settledHole(key),
    kind,
    pot,
    shares: shares?.map(formatDecimal) ?? null,
    values: values.map(sideHole),
  })),
  lines: settledShareLines(outing, result.lines),
  carried: result.carried,
  unclaimed: result.unclaimed,
  sharedOut: result.sharedOut,
  unsettled: result.unsettled.map(settledHole),
  isFinished: result.isFinished,
})

export const settledShareLines = (outing: Outing, lines: readonly ShareLine[]): SettledShareLine[] =>
  lines.map(({ side, total, place, isTied }) => ({
    side,
    names: namesOf(outing, side),
    total: formatDecimal(total),
    place,
    isTied,
  }))
