import type { FormatName } from '#core/formats/format-names.ts'
import type { Happenings } from '#core/formats/happenings.ts'
import { ball, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'

/** A total of every ball for itself, unless other sides are given, after what happened on the course. */
export const totalAfter = (
  format: FormatName,
  scores: Readonly<Record<string, readonly Written[]>>,
  happenings: Partial<Happenings>,
  more: Partial<PlayedGame> = {},
) => resultOf('total', { format, sides: Object.keys(scores).map(id => [id]), scores, happenings, ...more })

/** Of the side that the ball is in. */
export const lineOf = ({ lines }: ReturnType<typeof totalAfter>, id: string) => {
  const line = lines.find(({ side }) => side.includes(ball(id)))
  if (line === undefined) throw new Error(`no line of ${id}`)
  return line
}
