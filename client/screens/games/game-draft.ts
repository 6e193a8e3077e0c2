import type { FormatName } from '#core/formats/format-names.ts'
import type { GameMethods } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'
import { defaultGameMethods } from '#core/outing/game-settings.ts'
import type { Game } from '#core/outing/outing.ts'
import { formatList } from '../../words/figures.ts'
import { type Named, type Sides, textOfSides, waysToSide } from './sides.ts'

/** A game as it stands in the fields: numbers as they are typed, the other methods as they are. */
export interface GameDraft {
  readonly isOn: boolean
  readonly allowance: string
  /** The partners' shares as typed, by the number of players of a ball. */
  readonly shares: Readonly<Record<string, string>>
  readonly counting: string
  /** Strokes of a fixed maximum score. */
  readonly maximum: string
  readonly methods: GameMethods
  /** Of the ways to make sides that the balls give, the one chosen. */
  readonly sides: number
  /** Sides that are none of those ways; then `sides` is -1 until another is chosen. */
  readonly keptSides: Sides | null
}

/** A game that nobody has touched yet, with what its format proposes. */
export const newGameDraft = (format: FormatName, isOn = false): GameDraft => draftOf(defaultGameMethods(format), isOn)

/** A game of the outing, to be changed. */
export function draftOfGame(game: Game, balls: readonly Named[]): GameDraft {
  const { format } = game
  const ways = format === null ? [] : waysToSide(format, balls)
  const stood = format === null ? '' : textOfSides(format, game.sides ?? [])
  const sides = ways.findIndex(way => format !== null && textOfSides(format, way) === stood)
  return { ...draftOf(game.methods, true), sides, keptSides: sides === -1 ? game.sides : null }
}

function draftOf(methods: GameMethods, isOn: boolean): GameDraft {
  const shares = (methods.handicapShares ?? []).map(list => [String(list.length), formatList(list)])
  const { maximumScore } = methods
  return {
    isOn,
    allowance: String(methods.allowancePercent ?? 0),
    shares: Object.fromEntries(shares),
    counting: formatList(methods.countingBalls ?? []),
    maximum: maximumScore?.kind === 'fixed' ? String(maximumScore.strokes) : '10',
    methods,
    sides: 0,
    keptSides: null,
  }
}

/** Whole numbers with commas between; null where the text is anything else. */
export function parseNumbers(text: string): readonly number[] | null {
  const parts = text.split(',').map(part => part.trim())
  return parts.every(part => /^\d{1,3}$/.test(part)) ? parts.map(Number) : null
}

/** The allowance that the format's source recommends, by the number of balls that count where it names one. */
export function recommendedPercent(format: FormatName, counting: string): number {
  const { percent, byCount } = formatTable[format].allowance
  const [count, ...others] = parseNumbers(counting) ?? []
  return (count !== undefined && others.length === 0 && byCount?.[count - 1]) || percent
}

/** The methods that a draft without faults comes to. */
export function methodsOfDraft({ methods, allowance, shares, counting, maximum }: GameDraft): GameMethods {
  const { maximumScore } = methods
  return {
    ...methods,
    allowancePercent: methods.allowancePercent === null ? null : Number(allowance),
    handicapShares: methods.handicapShares && Object.values(shares).flatMap(text => withNumbers(text)),
    countingBalls: methods.countingBalls && parseNumbers(counting),
    maximumScore: maximumScore?.kind === 'fixed' ? { kind: 'fixed', strokes: Number(maximum) } : maximumScore,
  }
}

const withNumbers = (text: string): readonly (readonly number[])[] => {
  const numbers = parseNumbers(text)
  return numbers === null ? [] : [numbers]
}
