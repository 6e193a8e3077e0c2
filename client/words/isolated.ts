/** Letters that are written from right to left, Hebrew to Arabic with their presentation forms; the rest beyond. */
const fromRightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]|[\ud802\ud803\ud83a\ud83b][\udc00-\udfff]/

/** First strong isolate, and pop directional isolate: Unicode Standard Annex 9, 2.4. */
const [begin, end] = ['\u2068', '\u2069']

/**
 * A text of somebody's own as a part of a sentence: a name that is written from right to left changes nothing of what
 * stands beside it. Other texts stay as they are.
 */
export const isolated = (text: string): string => (fromRightToLeft.test(text) ? `${begin}${text}${end}` : text)
