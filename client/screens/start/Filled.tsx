import { type ReactNode, useState } from 'react'

interface Props {
  /** Came with a repeated game; what it is when the fields are first shown counts. */
  readonly isTaken: boolean
  readonly title: string
  readonly words: string
  readonly hasFault: boolean
  readonly children: ReactNode
}

/** Fields that a repeated game came with lie behind one line; those that are being typed in stay open. */
export function Filled({ isTaken, title, words, hasFault, children }: Props) {
  const [isClosed] = useState(isTaken)
  if (!isClosed) return children
  return (
    <details className="filled" open={hasFault || undefined}>
      <summary>
        <b>{title}</b> {words}
      </summary>
      <div className="stack">{children}</div>
    </details>
  )
}
