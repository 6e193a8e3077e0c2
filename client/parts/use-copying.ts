import { type RefObject, useRef, useState } from 'react'
import { copyText } from '../device/sharing.ts'
import { say } from '../words/say-any.ts'

interface Copying<Element> {
  /** Of the field in which the text stands. */
  readonly field: RefObject<Element | null>
  readonly copy: () => Promise<void>
  /** What came of it; empty before. */
  readonly said: string
  /** Says no more of it. */
  readonly hush: () => void
}

/** A text that is copied by a tap. On plain http the browser has no clipboard for pages: it stays selected, and `byHand` is said. */
export function useCopying<Element extends HTMLInputElement | HTMLTextAreaElement>(
  text: string,
  byHand: string,
): Copying<Element> {
  const [said, setSaid] = useState('')
  const field = useRef<Element>(null)
  const copy = async (): Promise<void> => {
    field.current?.select()
    setSaid((await copyText(text)) ? say('share-copied') : byHand)
  }
  return { field, copy, said, hush: () => setSaid('') }
}
