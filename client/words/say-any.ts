import { adviceWords } from './advice-words.ts'
import { boardWords } from './board-words.ts'
import { cardWords } from './card-words.ts'
import { deleteWords } from './delete-words.ts'
import { gameWords } from './game-words.ts'
import { groupWords } from './group-words.ts'
import { handOverWords } from './hand-over-words.ts'
import { homeWords } from './home-words.ts'
import { mendWords } from './mend-words.ts'
import { noteWords } from './note-words.ts'
import { outingWords } from './outing-words.ts'
import { phoneWords } from './phone-words.ts'
import { planWords } from './plan-words.ts'
import { resetWords } from './reset-words.ts'
import { resultWords } from './result-words.ts'
import { rulingWords } from './ruling-words.ts'
import { holeCatalogue } from './say.ts'
import { screenWords } from './screen-words.ts'
import { sketchWords } from './sketch-words.ts'
import { createSpeaker } from './speaker.ts'
import { standingWords } from './standing-words.ts'
import { startWords } from './start-words.ts'
import { strokesWords } from './strokes-words.ts'

/** Every text that a screen shows. */
export const catalogue = {
  ...holeCatalogue,
  ...screenWords,
  ...standingWords,
  ...boardWords,
  ...cardWords,
  ...deleteWords,
  ...gameWords,
  ...groupWords,
  ...homeWords,
  ...resultWords,
  ...rulingWords,
  ...startWords,
  ...strokesWords,
  ...resetWords,
  ...mendWords,
  ...noteWords,
  ...outingWords,
  ...phoneWords,
  ...handOverWords,
  ...planWords,
  ...adviceWords,
  ...sketchWords,
}

export type WordKey = keyof typeof catalogue

export const { say, sayCode, isWordKey } = createSpeaker(catalogue)
