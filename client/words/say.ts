import { boardWords } from './board-words.ts'
import { cardWords } from './card-words.ts'
import { commonWords } from './common-words.ts'
import { gameWords } from './game-words.ts'
import { golfWords } from './golf-words.ts'
import { groupWords } from './group-words.ts'
import { handOverWords } from './hand-over-words.ts'
import { holeWords } from './hole-words.ts'
import { homeWords } from './home-words.ts'
import { mendWords } from './mend-words.ts'
import { noteWords } from './note-words.ts'
import { outingWords } from './outing-words.ts'
import { phoneWords } from './phone-words.ts'
import { planWords } from './plan-words.ts'
import { resultWords } from './result-words.ts'
import { rulingWords } from './ruling-words.ts'
import { startWords } from './start-words.ts'
import { strokesWords } from './strokes-words.ts'
import type { Word } from './word.ts'

/** Every text that a screen shows. */
export const catalogue = {
  ...boardWords,
  ...cardWords,
  ...commonWords,
  ...golfWords,
  ...gameWords,
  ...groupWords,
  ...homeWords,
  ...resultWords,
  ...rulingWords,
  ...startWords,
  ...strokesWords,
  ...holeWords,
  ...mendWords,
  ...noteWords,
  ...outingWords,
  ...phoneWords,
  ...handOverWords,
  ...planWords,
}

export type WordKey = keyof typeof catalogue

export const isWordKey = (key: string): key is WordKey => Object.hasOwn(catalogue, key)

/** The text under a key, with its places filled in. */
export function say(key: WordKey, fill: Readonly<Record<string, string | number>> = {}): string {
  const word: Word = catalogue[key]
  return word.text.replaceAll(/\{([a-z]+)\}/g, (place, name: string) => String(fill[name] ?? place))
}

/** The text under a key made from a code, or another text where the code is not known here. */
export const sayCode = (
  prefix: string,
  code: string,
  otherwise: WordKey,
  fill: Readonly<Record<string, string>> = {},
): string => {
  const key = `${prefix}${code}`
  return say(isWordKey(key) ? key : otherwise, { ...fill, code })
}
