import { say } from '../../words/say-any.ts'
import type { SectionProps } from './section.ts'
import { isSuggestionOn, suggestionsFor, suggestionWords, withSuggestion } from './suggestions.ts'

/** A game in one tap, with what it is in one line. */
export function Suggestions({ draft, change }: Pick<SectionProps, 'draft' | 'change'>) {
  const suggested = suggestionsFor(draft)
  if (suggested.length === 0) return null
  return (
    <fieldset className="stack">
      <legend>{say('suggest-title')}</legend>
      <div className="suggestions">
        {suggested.map(format => (
          <button
            key={format}
            type="button"
            className="button suggestion"
            aria-pressed={isSuggestionOn(draft, format)}
            onClick={() => change(withSuggestion(draft, format))}
          >
            <b>{say(format)}</b>
            <span>{suggestionWords(format)}</span>
          </button>
        ))}
      </div>
    </fieldset>
  )
}
