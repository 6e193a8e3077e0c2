import type { Written } from './played-game.ts'
import { ball, type PlayedGame, resultOf } from './played-game.ts'
import { quillmoor } from './quillmoor.ts'

const pars: readonly number[] = quillmoor.pars

/** Pars with some holes over (+1) or under (-1), from hole 1, through so many holes. */
export const card = (over: Readonly<Record<number, Written>> = {}, through = 18): Written[] =>
  pars.map((par, place) => {
    const here = over[place + 1]
    if (here !== undefined) return typeof here === 'number' ? par + here : here
    return place < through ? par : null
  })

export const line = (game: PlayedGame, place = 0) => {
  const found = resultOf('match', game).matches[place]
  if (found === undefined) throw new Error('no match')
  return found
}

export const singles = (alder: readonly Written[], birch: readonly Written[], more: Partial<PlayedGame> = {}) =>
  line({ format: 'singles-match', sides: [['alder'], ['birch']], scores: { alder, birch }, ...more })

export const strokesOn = (found: ReturnType<typeof line>, id: string) =>
  [...(found.strokes.get(ball(id))?.byHole ?? [])].flatMap(([key, n]) => (n > 0 ? [Number(key.split('/')[0])] : []))
