import { useEffect, useState } from 'react'

interface Props {
  /** JSON. */
  readonly text: string
  readonly title: string
  /** What the file is called on the disk. */
  readonly name: string
  readonly className?: string
}

/** A text as a file of its own, made anew when the text is another. */
export function FileLink({ text, title, name, className = 'button' }: Props) {
  const [url, setUrl] = useState('')
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
    setUrl(made)
    return () => URL.revokeObjectURL(made)
  }, [text])
  return (
    <a className={className} href={url} download={name}>
      {title}
    </a>
  )
}
