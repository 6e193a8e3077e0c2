import { say } from '../words/say.ts'
import { lockStore } from './lock.ts'

/** Locks the page: it shows all that it showed and takes no touch. */
export function LockButton() {
  return (
    <button type="button" className="button" aria-label={say('lock')} onClick={() => lockStore.setState(true)}>
      {say('lock-short')}
    </button>
  )
}
