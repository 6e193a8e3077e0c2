import type { MatchHoleLine, MatchLine, SideHole } from '#core/formats/game-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import { sideName } from '../../parts/side-name.ts'
import { say } from '../../words/say-any.ts'

export interface MatchHoleWords {
  readonly key: string
  /** "7: Alder & Cedar", "8: halved" */
  readonly what: string
  /** "4 to 5, net"; empty while two scores wait. */
  readonly why: string
}

/** Every hole of a match that is decided or disputed: who won it and why. */
export const matchHoleWords = (outing: Outing, { sides, holes }: MatchLine): readonly MatchHoleWords[] =>
  holes.flatMap(line => {
    const what = whatWords(outing, sides, line)
    return what === null ? [] : [{ key: line.key, what, why: whyWords(line) }]
  })

function whatWords(outing: Outing, sides: MatchLine['sides'], { key, result, reason }: MatchHoleLine): string | null {
  const hole = key.split('/')[0] ?? ''
  if (result === null)
    return reason === 'out-of-play' && outing.notes.holesOut.has(key) ? say('hole-gone', { hole }) : null
  if (typeof result === 'object') return say('hole-two', { hole })
  if (result === 0) return say('hole-halved', { hole })
  return say('hole-to', { hole, side: sideName(outing, sides[result === 1 ? 0 : 1]) })
}

function whyWords({ reason, result, values }: MatchHoleLine): string {
  if (reason === null) return ''
  const [first, second] = values.map(valueWords)
  const [one = '', other = ''] = result === -1 ? [second, first] : [first, second]
  return say(`why-${reason}`, { one, other })
}

const valueWords = (side: SideHole): string => (side.kind === 'value' ? String(side.value) : '')

/** Concessions that changed nothing, and why. */
export const voidWords = (outing: Outing, { voids, sides }: MatchLine): readonly string[] =>
  voids.map(({ by, hole, reason }) => {
    const side = sides.find(each => each.includes(by)) ?? [by]
    return say(`void-${reason}`, { side: sideName(outing, side), hole: hole.split('/')[0] ?? '' })
  })
