import { commonWords } from './common-words.ts'
import { footWords } from './foot-words.ts'
import { golfWords } from './golf-words.ts'
import { holeWords } from './hole-words.ts'
import { createSpeaker } from './speaker.ts'

/** The texts of scoring a hole: they are on every page, the others come with the screens that show them. */
export const holeCatalogue = { ...commonWords, ...golfWords, ...holeWords, ...footWords }

export const { say, isWordKey } = createSpeaker(holeCatalogue)
