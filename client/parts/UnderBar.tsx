interface Props {
  readonly x: number
  readonly width: number
  readonly base: number
  readonly height: number
}

/** An open bar below the line, in the accent. */
export function UnderBar({ x, width, base, height }: Props) {
  return (
    <svg x={`${x}%`} width={`${width}%`} y={base} height={height} overflow="visible" aria-hidden="true">
      <line className="mark-under" x1="0" x2="0" y1="0" y2={height} transform="translate(1 0)" />
      <line className="mark-under" x1="100%" x2="100%" y1="0" y2={height} transform="translate(-1 0)" />
      <line className="mark-under" x1="0" x2="100%" y1={height - 1} y2={height - 1} />
    </svg>
  )
}
