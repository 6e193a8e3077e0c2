interface Props {
  readonly title: string
  /** One line each; without any there is nothing to open. */
  readonly lines: readonly string[]
}

/** The working behind a result, one tap away. */
export function Details({ title, lines }: Props) {
  if (lines.length === 0) return null
  return (
    <details>
      <summary>{title}</summary>
      <ul className="lines">
        {lines.map(line => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  )
}
