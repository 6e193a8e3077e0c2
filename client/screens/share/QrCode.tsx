import { useMemo } from 'react'
import { encode } from 'uqr'

interface Props {
  readonly text: string
  readonly label: string
  /** How much of a code may be hidden: M where it hangs on paper, L on a screen that turns many. */
  readonly correction?: 'L' | 'M'
}

/** Quiet zone, in modules: QR Code, ISO/IEC 18004, asks for four. */
const border = 4

/** A QR code, black on white by day and by night, since scanners expect it. */
export function QrCode({ text, label, correction = 'M' }: Props) {
  const { size, path } = useMemo(() => drawQr(text, correction), [text, correction])
  return (
    <svg className="qr" role="img" aria-label={label} viewBox={`0 0 ${size} ${size}`} shapeRendering="crispEdges">
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  )
}

function drawQr(text: string, ecc: 'L' | 'M'): { readonly size: number; readonly path: string } {
  const { size, data } = encode(text, { ecc, border })
  const path = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join('')
  return { size, path }
}
