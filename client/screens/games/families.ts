import { type FormatName, formatNames } from '#core/formats/format-names.ts'
import { partsFormats } from '#core/formats/parts-formats.ts'
import { shareFormats } from '#core/formats/share-formats.ts'
import { formatTable } from '#core/formats/table.ts'
import { type Named, waysToSide } from './sides.ts'

/** Kinds of game as golfers tell them apart, in the order of a list. */
export const families = ['own-ball', 'pairs', 'one-ball', 'each', 'parts'] as const
export type Family = (typeof families)[number]

export function familyOf(format: FormatName): Family {
  const { sides } = formatTable[format]
  if (format in partsFormats) return 'parts'
  if (format in shareFormats) return 'each'
  if (sides.players.min > 1) return 'one-ball'
  return (sides.balls.max ?? 2) > 1 ? 'pairs' : 'own-ball'
}

/** True where a ball of so many players is one that the format plays with. */
export function fitsBalls(format: FormatName, ballPlayers: number): boolean {
  const { min, max } = formatTable[format].sides.players
  return ballPlayers >= min && ballPlayers <= (max ?? ballPlayers)
}

/** The formats that these balls can play or that are chosen already, by family; families with none are left out. */
export function formatsFitting(
  balls: readonly Named[],
  ballPlayers: number,
  isOn: (format: FormatName) => boolean,
  isLeftOut: (format: FormatName) => boolean = () => false,
): readonly { readonly family: Family; readonly formats: readonly FormatName[] }[] {
  const fitting = formatNames.filter(
    format =>
      !isLeftOut(format) && fitsBalls(format, ballPlayers) && (isOn(format) || waysToSide(format, balls).length > 0),
  )
  return families
    .map(family => ({ family, formats: fitting.filter(format => familyOf(format) === family) }))
    .filter(({ formats }) => formats.length > 0)
}
