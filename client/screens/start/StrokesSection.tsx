import { resultsOf } from '#core/outing/results-of.ts'
import { say } from '../../words/say-any.ts'
import { StrokesList } from '../strokes/StrokesList.tsx'
import type { Draft } from './draft.ts'
import { outingOfDraft } from './outing-of-draft.ts'

/** Who receives what, before anybody has teed off. */
export function StrokesSection({ draft }: { readonly draft: Draft }) {
  const outing = outingOfDraft(draft)
  return (
    <section className="section" aria-label={say('strokes-title')}>
      <h2>{say('strokes-title')}</h2>
      {outing ? (
        <StrokesList outing={outing} results={resultsOf(outing)} />
      ) : (
        <p className="quiet">{say('strokes-wait')}</p>
      )}
    </section>
  )
}
