import type { HoleKey } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { LevelCard } from '#core/outing/results.ts'
import { capital, formatOver, formatThree } from '../words/figures.ts'
import { say } from '../words/say.ts'
import { type Mark, markOfCardScore, outOfPlay } from './mark.ts'

export interface StripBlock {
  readonly number: number
  readonly marks: readonly { readonly key: HoleKey; readonly mark: Mark }[]
  /** "+3" for a closed block, "in play" for the wide one, else empty. */
  readonly sum: string
  readonly isWide: boolean
}

/** The strip of six of one ball. `inPlay` is a hole of the block drawn wide, or null for six equal ones. */
export function stripOf(outing: Outing, level: LevelCard, inPlay: HoleKey | null): readonly StripBlock[] {
  const card = outing.cards.get(level.ball)
  return level.threes.map(three => {
    const isWide = inPlay !== null && three.holes.includes(inPlay)
    const closed = three.isClosed && three.overLevel !== null ? formatOver(three.overLevel) : ''
    return {
      number: three.number,
      marks: three.holes.map(key => ({
        key,
        mark: outing.notes.holesOut.has(key)
          ? outOfPlay
          : markOfCardScore(card?.scores.get(key), level.levels.get(key) ?? 0),
      })),
      sum: isWide ? say('in-play') : closed,
      isWide,
    }
  })
}

/** The strip in words, for those who do not see it. */
export function stripWords(player: string, level: LevelCard): string {
  const blocks = level.threes
    .filter(({ overLevel }) => overLevel !== null)
    .map(({ number, overLevel }) => `${formatThree(number)} ${formatOver(overLevel ?? 0)}`)
  return say('strip-of', { player, blocks: blocks.join(', ') || say('strip-not-played') })
}

export const threeWords = (number: number): string => capital(formatThree(number))
