import { unreadable } from '#shared/atoms.ts'

/** More marks on one letter than any writing needs: they would be drawn over the lines above and below. */
const tooManyMarks = /(\p{M}{3})\p{M}+/gu

/**
 * What a person has typed or pasted, as it may stand in a name: a tab or a new line is a space, and what cannot be seen
 * (control, direction and zero-width characters) is left out, since no server takes a text with one.
 */
export const typedText = (text: string): string =>
  text
    .replaceAll(/[\t\r\n\u2028\u2029]+/g, ' ')
    .replaceAll(new RegExp(unreadable, 'g'), '')
    .replaceAll(tooManyMarks, '$1')
