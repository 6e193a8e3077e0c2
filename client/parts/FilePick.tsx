import { useRef } from 'react'

interface Props {
  readonly label: string
  readonly onText: (text: string, name: string) => void
}

/** A button that reads a text file of the phone. */
export function FilePick({ label, onText }: Props) {
  const input = useRef<HTMLInputElement>(null)
  const read = async (file: File | undefined): Promise<void> => {
    if (file) onText(await file.text(), file.name)
    // The same file can be taken again.
    if (input.current) input.current.value = ''
  }
  return (
    <label className="button">
      {label}
      <input
        ref={input}
        className="hidden"
        type="file"
        accept=".json,application/json"
        onChange={event => void read(event.target.files?.[0])}
      />
    </label>
  )
}
