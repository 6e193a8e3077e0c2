import { useState } from 'react'
import { say } from '../../words/say-any.ts'
import { holesInPlay } from './draft.ts'
import type { SectionProps } from './section.ts'

const indexes = Array.from({ length: 18 }, (_, place) => String(place + 1))

/** The stroke indexes as they are read off the card, a tap a hole; one that is used already leads back to its hole. */
export function IndexKeys({ draft, change }: Pick<SectionProps, 'draft' | 'change'>) {
  const holes = holesInPlay(draft)
  const [again, setAgain] = useState<number | null>(null)
  const empty = holes.findIndex(({ index }) => index === '') + 1
  const hole = again ?? (empty === 0 ? null : empty)
  const put = (index: string): void => {
    const at = holes.findIndex(each => each.index === index) + 1
    if (at > 0 || hole === null) setAgain(at || null)
    else {
      setAgain(null)
      change({ holes: draft.holes.map((each, place) => (place === hole - 1 ? { ...each, index } : each)) })
    }
  }
  return (
    <fieldset className="stack">
      <legend className="hidden">{say('index-keys')}</legend>
      <p className="index-now" aria-live="polite">
        {hole === null ? say('index-keys-done') : say('index-keys-now', { hole })}
      </p>
      <div className="index-keys">
        {indexes.map(index => {
          const at = holes.findIndex(each => each.index === index) + 1
          return (
            <button
              key={index}
              type="button"
              className="button"
              aria-pressed={at > 0}
              aria-label={at > 0 ? say('index-key-at', { index, hole: at }) : say('index-key', { index })}
              onClick={() => put(index)}
            >
              {index}
            </button>
          )
        })}
      </div>
    </fieldset>
  )
}
