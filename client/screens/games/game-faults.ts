import type { FormatName } from '#core/formats/format-names.ts'
import type { GameSetting } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'
import { say } from '../../words/say-any.ts'
import { settingsOf } from './format-settings.ts'
import { sidesOfDraft } from './game-acts.ts'
import { type GameDraft, parseNumbers } from './game-draft.ts'
import { ballsNeeded, fitsSides, type Named, waysToSide } from './sides.ts'

/** A field that keeps something from being put in, by its id, with the sentence that people read. */
export interface FieldFault {
  readonly field: string
  readonly text: string
}

/** A whole number, missing or out of range. */
export function faultOfNumber(field: string, name: string, text: string, low: number, high: number): FieldFault[] {
  if (text.trim() === '') return [{ field, text: say('fault-missing', { field: name }) }]
  const isWhole = /^[+-]?\d+$/.test(text.trim())
  if (isWhole && Number(text) >= low && Number(text) <= high) return []
  return [{ field, text: say('fault-number', { field: name, low, high }) }]
}

/** The fields of a game at fault; `ballPlayers` is how many play one ball. */
export function faultsOfGame(
  format: FormatName,
  draft: GameDraft,
  balls: readonly Named[],
  ballPlayers: number,
): FieldFault[] {
  const game = say(format)
  if (waysToSide(format, balls).length === 0) {
    return [{ field: format, text: say('fault-game-players', { game, n: ballsNeeded(format) }) }]
  }
  if (!fitsSides(format, sidesOfDraft(format, draft, balls))) {
    return [{ field: format, text: say('fault-sides', { game }) }]
  }
  return settingsOf(format).flatMap(setting => faultsOfSetting(setting, { format, game, draft, ballPlayers }))
}

interface Asked {
  readonly format: FormatName
  readonly game: string
  readonly draft: GameDraft
  readonly ballPlayers: number
}

function faultsOfSetting(setting: GameSetting, { format, game, draft, ballPlayers }: Asked): FieldFault[] {
  if (setting === 'allowancePercent') {
    return faultOfNumber(`${format}-allowance`, say('game-allowance', { game }), draft.allowance, 0, 100)
  }
  if (setting === 'handicapShares') {
    const shares = parseNumbers(draft.shares[ballPlayers] ?? '')
    const isRight = shares?.length === ballPlayers && shares.every(share => share <= 100)
    const field = say('game-shares', { game })
    return isRight ? [] : [{ field: `${format}-shares`, text: say('fault-shares', { field, n: ballPlayers }) }]
  }
  if (setting === 'countingBalls') return faultsOfCounting(format, game, draft)
  if (setting === 'maximumScore' && draft.methods.maximumScore?.kind === 'fixed') {
    return faultOfNumber(`${format}-maximum`, say('game-maximum-strokes', { game }), draft.maximum, 3, 30)
  }
  return []
}

function faultsOfCounting(format: FormatName, game: string, { counting }: GameDraft): FieldFault[] {
  const most = formatTable[format].sides.balls.max ?? 4
  const numbers = parseNumbers(counting)
  if (numbers?.every(number => number >= 1 && number <= most)) return []
  const field = say('game-counting', { game })
  return [{ field: `${format}-counting`, text: say('fault-counting', { field, n: most }) }]
}
