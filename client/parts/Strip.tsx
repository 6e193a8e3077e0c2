import { Bar } from './Bar.tsx'
import type { StripBlock } from './strip-view.ts'

interface Props {
  readonly blocks: readonly StripBlock[]
  readonly label: string
  readonly hasSums: boolean
}

const base = 30

/** The strip of six: blocks of three holes on one line, which is the ball's own level. */
export function Strip({ blocks, label, hasSums }: Props) {
  return (
    <div className="strip" role="img" aria-label={label}>
      {blocks.map(block => (
        <div key={block.number} className={block.isWide ? 'strip-block wide' : 'strip-block'}>
          <BlockDrawing block={block} />
          {hasSums && <span className="strip-sum">{block.sum || '\u00a0'}</span>}
        </div>
      ))}
    </div>
  )
}

function BlockDrawing({ block }: { readonly block: StripBlock }) {
  const cell = 100 / Math.max(block.marks.length, 1)
  return (
    <svg height={52} aria-hidden="true">
      <line className="mark-line" x1="0" x2="100%" y1={base} y2={base} />
      {block.marks.map(({ key, mark }, place) => (
        <Bar key={key} mark={mark} x={place * cell + cell * 0.04} width={cell * 0.92} base={base} />
      ))}
    </svg>
  )
}
