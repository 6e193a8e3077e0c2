import { useEffect } from 'react'
import { useStore } from 'zustand'
import { createStore } from 'zustand/vanilla'
import { say } from '../words/say.ts'
import { lockStore } from './lock.ts'

/** True for a moment after the first corner. */
const firstStore = createStore<boolean>(() => false)

/** After the first corner the second opens the page for so long. */
const openMs = 5_000

/** The corner that is pressed first, at the top of a locked page: all of the page that is heard. */
export function FirstCorner() {
  const isFirst = useStore(firstStore)
  useEffect(() => {
    if (!isFirst) return
    const timer = setTimeout(() => firstStore.setState(false), openMs)
    return () => clearTimeout(timer)
  }, [isFirst])
  return (
    <main className="lock-bar">
      <h1 className="hidden">{say('locked-page')}</h1>
      <button
        type="button"
        className="button corner"
        aria-pressed={isFirst}
        aria-label={say('unlock-first')}
        onClick={() => firstStore.setState(true)}
      >
        1
      </button>
      <p role="status">{say(isFirst ? 'unlock-second-now' : 'locked')}</p>
    </main>
  )
}

/** The corner that is pressed after it, at the foot. */
export function SecondCorner() {
  const isFirst = useStore(firstStore)
  const unlock = (): void => {
    firstStore.setState(false)
    lockStore.setState(false)
  }
  return (
    <footer className="lock-bar last">
      <button
        type="button"
        className="button corner"
        disabled={!isFirst}
        aria-label={say('unlock-second')}
        onClick={unlock}
      >
        2
      </button>
    </footer>
  )
}
