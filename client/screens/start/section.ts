import type { DraftInHand } from './use-draft.ts'

/** What every section of the page works on. */
export interface SectionProps extends DraftInHand {
  /** The sentence for a field at fault, by the field's id. */
  readonly faultAt: (field: string) => string | undefined
}
