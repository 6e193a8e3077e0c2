import { parseIndexTenths } from '#core/outing/tenths.ts'
import { typedText } from '../../parts/typed-text.ts'
import type { HandicapKind } from './draft.ts'

/** A line of a list of people: "Fir 14", "Hazel Oak, +1.3", "Rowan". */
export interface NamePasted {
  readonly name: string
  /** As typed, with a decimal point; empty where the line has none. */
  readonly figure: string
}

const withFigure = /^(.*?)[\s,;]+([+-]?\d{1,2}(?:[.,]\d)?)$/

/** The people of a pasted list, one a line; empty lines are passed over. */
export const parseNames = (text: string): readonly NamePasted[] =>
  text
    .split(/\r?\n/)
    .map(line =>
      typedText(line)
        .trim()
        .replace(/^\d+[.)]\s+/, ''),
    )
    .filter(line => line !== '')
    .map(line => {
      const [, name, figure] = withFigure.exec(line) ?? []
      const rest = (name ?? line).replace(/[\s,;]+$/, '').trim()
      return { name: rest, figure: (figure ?? '').replace(',', '.') }
    })

/** What the figures of a list look like: an index where one of them has a decimal. */
export function kindPasted(names: readonly NamePasted[]): HandicapKind {
  const hasTenths = names.some(({ figure }) => figure.includes('.') && parseIndexTenths(figure) !== null)
  return hasTenths ? 'index' : 'course-handicap'
}
