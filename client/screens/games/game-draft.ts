import type { FormatName } from '#core/formats/format-names.ts'
import type { GameMethods } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'
import { defaultGameMethods } from '#core/outing/game-settings.ts'
import type { Game } from '#core/outing/outing.ts'
import { formatList } from '../../words/figures.ts'
import { isEachAlone, type Named, type Sides, textOfSides, waysToSide } from './sides.ts'

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
  /** The sides chosen, by their balls, so that a ball more changes nobody's; null for the first way that the balls give. */
  readonly sidesChosen: Sides | null
}

/** A game that nobody has touched yet, with what its format proposes. */
export const newGameDraft = (format: FormatName, isOn = false): GameDraft => draftOf(defaultGameMethods(format), isOn)

/** A game of the outing, to be changed. */
export function draftOfGame(game: Game, balls: readonly Named[]): GameDraft {
  const { format, sides } = game
  const [whole = []] = format !== null && isEachAlone(format) ? waysToSide(format, balls) : []
  // Where everybody plays for themselves, whoever comes later does too.
  const isWhole = format !== null && whole.length > 0 && textOfSides(format, whole) === textOfSides(format, sides ?? [])
  return { ...draftOf(game.methods, true), sidesChosen: isWhole ? null : sides }
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
    sidesChosen: null,
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
