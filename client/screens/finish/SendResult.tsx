import type { Group, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { canShare, share } from '../../device/sharing.ts'
import { fire } from '../../parts/fire.ts'
import { useCopying } from '../../parts/use-copying.ts'
import { say } from '../../words/say-any.ts'
import { headWords, resultText } from './result-text.ts'

interface Props {
  readonly outing: Outing
  readonly results: Results
  readonly group: Group
}

/** The result as text, on to a chat: by the phone's share sheet, by the clipboard, or selected by hand. */
export function SendResult({ outing, results, group }: Props) {
  const text = resultText(outing, results, group)
  const shared = { title: headWords(outing), text }
  const { field, copy, said, hush } = useCopying<HTMLTextAreaElement>(text, say('result-select'))
  const send = async (): Promise<void> => {
    hush()
    if (!(await share(shared))) await copy()
  }
  return (
    <section className="section" aria-label={say('result-title')}>
      <h2>{say('result-title')}</h2>
      <div className="pair">
        {canShare(shared) && (
          <button type="button" className="button loud grow" onClick={() => fire(send())}>
            {say('result-send')}
          </button>
        )}
        <button type="button" className="button grow" onClick={() => fire(copy())}>
          {say('result-copy')}
        </button>
      </div>
      <p role="status">{said}</p>
      <label className="field">
        {say('result-text')}
        <textarea ref={field} className="result-text" readOnly rows={text.split('\n').length} value={text} />
      </label>
      <p className="quiet">{say('result-hint')}</p>
    </section>
  )
}
