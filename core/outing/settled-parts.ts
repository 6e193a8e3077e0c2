import type { PartLine, PartsResult } from '#core/formats/parts-result.ts'
import { formatDecimal } from '#core/values/decimal.ts'
import type { Outing } from './outing.ts'
import type { SettledPart, SettledParts } from './settle-output-parts.ts'
import { settledMatch } from './settled-match.ts'
import { settledShareLines } from './settled-shares.ts'
import { settledHole } from './settled-side.ts'

export const settledParts = (outing: Outing, result: PartsResult): SettledParts => ({
  parts: result.parts.map(part => settledPart(outing, part)),
  lines: settledShareLines(outing, result.lines),
  unsettled: result.unsettled.map(settledHole),
  isFinished: result.isFinished,
})

const settledPart = (outing: Outing, part: PartLine): SettledPart => ({
  name: part.name,
  number: part.number,
  holes: part.holes.map(settledHole),
  by: part.by,
  match: part.match && settledMatch(outing, part.match),
  up: part.up,
  tallies: part.tallies,
  shares: part.shares?.map(formatDecimal) ?? null,
})
