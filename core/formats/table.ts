import { contestStrokes, type StrokesGiven } from './contest-names.ts'
import type { FormatName } from './format-names.ts'
import type { FormatRow } from './format-row.ts'
import { matchFormats } from './match-formats.ts'
import { partsFormats } from './parts-formats.ts'
import { shareFormats } from './share-formats.ts'
import { totalFormats } from './total-formats.ts'

/** Every format: ball rule x measure x contest. Adding one is adding a row. */
export const formatTable: Readonly<Record<FormatName, FormatRow>> = {
  ...totalFormats,
  ...matchFormats,
  ...shareFormats,
  ...partsFormats,
}

/** Whether a ball plays off its own strokes or off the difference from the lowest. */
export const strokesGivenIn = (format: FormatName): StrokesGiven => contestStrokes[formatTable[format].contest]
