import { useState } from 'react'
import { remember, remembered } from '../../device/remembered.ts'
import { type Draft, emptyDraft } from './draft.ts'

export interface DraftInHand {
  readonly draft: Draft
  readonly change: (changed: Partial<Draft>) => void
}

/** Puts a draft in the place of the one that stood. */
export const keepDraft = (draft: Draft): void => remember('draft', JSON.stringify(draft))

/** The draft, kept on this phone until the outing starts, so that nothing typed is lost. */
export function useDraft(): DraftInHand & { readonly forget: () => void } {
  const [draft, setDraft] = useState(restoreDraft)
  const change = (changed: Partial<Draft>): void => {
    const next = { ...draft, ...changed }
    keepDraft(next)
    setDraft(next)
  }
  return { draft, change, forget: () => remember('draft', null) }
}

/** A draft of an older shape is left: it is only a convenience. */
function restoreDraft(): Draft {
  const kept = parseKept(remembered('draft'))
  return kept !== null && isWhole(kept, emptyDraft) && isWhole(kept.games, emptyDraft.games)
    ? (kept as unknown as Draft)
    : emptyDraft
}

function parseKept(text: string | null): Readonly<Record<string, unknown>> | null {
  try {
    const kept: unknown = JSON.parse(text ?? 'null')
    return typeof kept === 'object' && kept !== null ? { ...kept } : null
  } catch {
    return null
  }
}

const isWhole = (kept: unknown, empty: object): boolean =>
  typeof kept === 'object' && kept !== null && Object.keys(empty).every(field => field in kept)
