/** Where a text comes from: the trade, a published standard (with its source), or this product. */
export const wordTags = ['trade', 'standard', 'own'] as const
export type WordTag = (typeof wordTags)[number]

/** One text on a screen. `{name}` stands for a value that is filled in. */
export interface Word {
  readonly text: string
  readonly tag: WordTag
  /** Of a standard's word: publisher and document. */
  readonly source: string | null
}

export type Words = Readonly<Record<string, Word>>

export const trade = (text: string): Word => ({ text, tag: 'trade', source: null })
export const own = (text: string): Word => ({ text, tag: 'own', source: null })
export const standard = (text: string, source: string): Word => ({ text, tag: 'standard', source })

export const rulesOfGolf = 'Rules of Golf 2023, R&A and USGA'
export const rulesOfHandicapping = 'Rules of Handicapping 2024, R&A and USGA'
