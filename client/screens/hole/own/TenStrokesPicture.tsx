import { wholeIn } from '#core/plan/advice/in-unit.ts'
import type { TenStrokes } from '#core/plan/picture/ten-strokes.ts'
import type { LengthUnit } from '#core/values/length.ts'
import { say } from '../../../words/say-any.ts'
import { countsText, pictureText } from '../../../words/ten-strokes-text.ts'
import { pictureWidth, strokesDrawn, widthYd } from './ten-strokes-view.ts'

interface Props {
  readonly title: string
  readonly picture: TenStrokes
  readonly aimRightYd: number
  readonly unit: LengthUnit
}

const [height, ground, tall, wide] = [70, 36, 28, 8] as const

/** Ten shots as ten short strokes across the hole, with the count in words. */
export function TenStrokesPicture({ title, picture, aimRightYd, unit }: Props) {
  return (
    <figure className="ten-strokes">
      <figcaption>
        <b>{title}</b> {countsText(picture)}
      </figcaption>
      <svg role="img" aria-label={pictureText(picture)} viewBox={`0 0 ${pictureWidth} ${height}`}>
        <line className="ten-aim" x1={pictureWidth / 2} y1={0} x2={pictureWidth / 2} y2={height} />
        <line className="ten-ground" x1={0} y1={ground} x2={pictureWidth} y2={ground} />
        {strokesDrawn(picture, aimRightYd).map(({ x, shape }) => (
          <rect
            key={x}
            className={`ten-stroke ${shape}`}
            x={x - wide / 2}
            y={shape === 'hanging' ? ground + 2 : ground - tall - 2}
            width={wide}
            height={tall}
          />
        ))}
      </svg>
      <p className="quiet">{say('ten-wide', { n: wholeIn(widthYd(picture), unit), unit: say(`unit-${unit}`) })}</p>
    </figure>
  )
}
