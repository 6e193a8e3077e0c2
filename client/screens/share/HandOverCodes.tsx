import { say } from '../../words/say-any.ts'
import { CodeTurner } from './CodeTurner.tsx'

/** The codes of an outing; they let in whoever reads them. */
export function HandOverCodes({ codes }: { readonly codes: readonly string[] }) {
  return (
    <>
      <CodeTurner codes={codes} />
      <p className="quiet">{say('hand-over-secret')}</p>
    </>
  )
}
